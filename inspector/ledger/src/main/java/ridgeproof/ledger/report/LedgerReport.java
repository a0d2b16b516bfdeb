package ridgeproof.ledger.report;

import java.time.LocalDate;
import java.util.Map;
import ridgeproof.ledger.health.StationHealth;
import ridgeproof.ledger.response.Reasons;
import ridgeproof.ledger.store.LedgerStore;
import ridgeproof.spec.SpecTables;

/**
 * All that a report on a ledger tells.
 *
 * @param entries in the ledger
 * @param submissions control numbers that were submitted
 * @param answered submissions with a response
 * @param unmatched responses that answer nothing in the ledger
 * @param silent submissions without a control number, which no response can be tied to
 * @param names what to call operators and reasons
 */
public record LedgerReport(
    long entries,
    int submissions,
    int answered,
    int unmatched,
    int silent,
    Agreement agreement,
    Acceptance acceptance,
    Recaptures recaptures,
    StationHealth health,
    Names names) {

  /** What a report calls what the ledger keeps by a hash or a code. */
  public record Names(Map<String, String> operators, Reasons reasons, SpecTables tables) {

    private static final int DIGITS = 8;

    public Names {
      operators = Map.copyOf(operators);
    }

    /** The name where it is known, else the first digits of the hash. */
    public String operator(String hash) {
      if (hash.isEmpty()) {
        return "operator not stated";
      }
      String known = operators.get(hash);
      return known != null
          ? known
          : "operator " + hash.substring(0, Math.min(DIGITS, hash.length()));
    }

    /** A rule with its title. */
    public String rule(String id) {
      return tables.catalogue().rules().stream()
          .filter(rule -> rule.id().equals(id))
          .findFirst()
          .map(rule -> id + " " + rule.title())
          .orElse(id);
    }

    /** A finger in words. */
    public String finger(int code) {
      return code == 0 ? "no finger named" : tables.positionName(code);
    }
  }

  /**
   * Makes the report.
   *
   * @param operators names of operators by their keyed hash, where they are known
   * @param lastDay later visits are left out of the health of stations
   */
  public static LedgerReport of(
      LedgerStore store, SpecTables tables, Map<String, String> operators, LocalDate lastDay) {
    Cases cases = Cases.load(store.queries());
    Names names = new Names(operators, new Reasons(tables), tables);
    return new LedgerReport(
        store.count(),
        cases.submissions().size(),
        cases.sendings().size(),
        cases.unmatched(),
        cases.silent(),
        Agreement.of(cases, store.queries()),
        Acceptance.of(cases).named(names::operator),
        Recaptures.of(cases, store.queries()),
        StationHealth.of(store.queries(), lastDay),
        names);
  }
}
