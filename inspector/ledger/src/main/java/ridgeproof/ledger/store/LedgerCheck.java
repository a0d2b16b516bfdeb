package ridgeproof.ledger.store;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Looks for what a sound ledger cannot hold. */
final class LedgerCheck {

  private final LedgerStore store;
  private final List<String> parts;
  private final List<String> problems = new ArrayList<>();

  LedgerCheck(LedgerStore store, List<String> parts) {
    this.store = store;
    this.parts = parts;
  }

  List<String> problems(String soundness) {
    String verdict = store.text(soundness);
    if (!verdict.equals("ok")) {
      problems.add("The database file is damaged.");
    }
    for (String part : parts) {
      none(
          "SELECT COUNT(*) FROM " + part + " WHERE entry NOT IN (SELECT id FROM entry)",
          part + " rows belong to no entry");
    }
    for (String part : List.of("finding", "print")) {
      none(
          "SELECT COUNT(*) FROM entry e WHERE "
              + part
              + "s <> (SELECT COUNT(*) FROM "
              + part
              + " p WHERE p.entry = e.id)",
          "entries do not have all of their " + part + " rows");
    }
    none(
        "SELECT COUNT(*) FROM entry WHERE station NOT IN (SELECT id FROM station)",
        "entries name a station that is not in the ledger");
    none(
        "SELECT COUNT(*) FROM entry WHERE (outcome IS NULL) <> (refers IS NULL)",
        "responses are incomplete");
    return problems;
  }

  private void none(String query, String problem) {
    long count = store.number(query);
    if (count > 0) {
      problems.add(String.format(Locale.ROOT, "%d %s.", count, problem));
    }
  }
}
