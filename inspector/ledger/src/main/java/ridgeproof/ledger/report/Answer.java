package ridgeproof.ledger.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import ridgeproof.examination.message.BureauMessages;
import ridgeproof.examination.message.Explanation;
import ridgeproof.ledger.Entry;
import ridgeproof.ledger.ResponseMessage;
import ridgeproof.ledger.ResponseOutcome;
import ridgeproof.ledger.response.Responses;
import ridgeproof.ledger.store.LedgerStore;
import ridgeproof.report.TextSanitizer;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.rule.BureauMessage;
import ridgeproof.transaction.Transaction;

/**
 * One response in words, with the submission that it answers.
 *
 * @param lines to print
 */
public record Answer(boolean accepted, List<String> lines) {

  /**
   * Explains a response.
   *
   * @param response the entry, which need not be in the ledger yet
   * @param transaction the response itself
   */
  public static Answer of(
      Entry response, Transaction transaction, LedgerStore store, SpecTables tables) {
    boolean accepted = response.response().orElseThrow().outcome() == ResponseOutcome.ACCEPTED;
    List<String> lines = new ArrayList<>();
    lines.add(
        accepted ? "The bureau accepted the submission." : "The bureau rejected the submission.");
    Set<String> found = submission(response, store, lines);
    if (!accepted) {
      List<ResponseMessage> reasons = response.response().get().messages();
      List<String> texts = Responses.texts(transaction).toList();
      BureauMessages messages = new BureauMessages(tables);
      for (int i = 0; i < reasons.size(); i++) {
        explain(messages.explain(texts.get(i)), reasons.get(i), found, tables, lines);
      }
      if (reasons.isEmpty()) {
        lines.add("The response gives no reason (field 2.060).");
      }
    }
    return new Answer(accepted, List.copyOf(lines));
  }

  /** The rules that had reported something in the submission. */
  private static Set<String> submission(Entry response, LedgerStore store, List<String> lines) {
    String control = response.response().orElseThrow().refers();
    Set<String> rules = new TreeSet<>();
    long[] last = new long[1];
    String[] verdict = new String[1];
    long[] id = {-1};
    store
        .queries()
        .forEach(
            "SELECT id, day, verdict, control FROM entry WHERE outcome IS NULL"
                + " AND control = '"
                + hexadecimal(control)
                + "' ORDER BY day, examined",
            row -> {
              if (id[0] < 0 || row.getLong(2) <= response.day().toEpochDay()) {
                id[0] = row.getLong(1);
                last[0] = row.getLong(2);
                verdict[0] = row.getString(3);
              }
            });
    if (id[0] < 0) {
      lines.add("It refers to a control number that is not in the ledger.");
      return rules;
    }
    store
        .queries()
        .forEach(
            "SELECT DISTINCT rule FROM finding WHERE entry = ? AND severity <> 'NOTE'",
            row -> rules.add(row.getString(1)),
            id[0]);
    lines.add(
        String.format(
            Locale.ROOT,
            "It answers the submission of %s, which was %s before sending.",
            LocalDate.ofEpochDay(last[0]),
            verdict[0]));
    return rules;
  }

  private static String hexadecimal(String hash) {
    if (!hash.matches("[0-9a-f]+")) {
      throw new IllegalArgumentException("no hash");
    }
    return hash;
  }

  private static void explain(
      Explanation known,
      ResponseMessage reason,
      Set<String> found,
      SpecTables tables,
      List<String> lines) {
    lines.add("");
    List<BureauMessage> messages = known.messages().limit(1).toList();
    String finger =
        reason.finger().isPresent()
            ? " (" + tables.positionName(reason.finger().getAsInt()) + ")"
            : "";
    if (messages.isEmpty()) {
      lines.add(
          "Reason: "
              + TextSanitizer.of(reason.reason())
              + finger
              + ". It is not in the tables; ask the bureau.");
      return;
    }
    BureauMessage message = messages.get(0);
    String code = message.code().filter(c -> !message.isFamily()).map(c -> c + " ").orElse("");
    lines.add("Reason: " + code + message.title() + finger + ".");
    lines.add("Why: " + message.meaning());
    lines.add("Do: " + message.remedy());
    Set<String> seen = new TreeSet<>(found);
    seen.retainAll(known.rules());
    lines.add(
        seen.isEmpty()
            ? "Before sending, no rule had reported a cause of it: a miss."
            : "Before sending, this had been reported: "
                + seen.stream().collect(Collectors.joining(", "))
                + ".");
  }

  /**
   * The words.
   *
   * @param file what to call the response
   */
  public String text(String file) {
    return TextSanitizer.of(file) + "\n  " + String.join("\n  ", lines) + "\n";
  }
}
