package ridgeproof.examination.cause.transport;

import java.util.List;
import java.util.Set;
import ridgeproof.finding.Finding;
import ridgeproof.transaction.Transaction;

/**
 * A transaction as it was read, and what reading and the rules of its structure found.
 *
 * @param findings those of the structure; no image was opened for them
 */
public record Reading(Transaction transaction, List<Finding> findings) {

  /** What a reader meets where bytes came in or went; not what a station writes wrongly. */
  private static final Set<String> BROKEN =
      Set.of(
          "RP-STR-002",
          "RP-STR-003",
          "RP-STR-004",
          "RP-STR-005",
          "RP-STR-006",
          "RP-STR-007",
          "RP-STR-008",
          "RP-STR-009",
          "RP-STR-012",
          "RP-STR-013",
          "RP-STR-014",
          "RP-STR-017",
          "RP-STR-018",
          "RP-STR-024",
          "RP-STR-028",
          "RP-XML-001",
          "RP-XML-012",
          "RP-XML-013",
          "RP-XML-015");

  /** Whether a finding shows that the records do not hang together. */
  static boolean isBroken(Finding finding) {
    return BROKEN.contains(finding.ruleId());
  }

  /** In how many places the records do not hang together. */
  int breaks() {
    return (int) findings.stream().filter(Reading::isBroken).count();
  }

  boolean hasRecords() {
    return !transaction.records().isEmpty();
  }

  /** Whether every record is where the one before it ends and all are what the list says. */
  boolean isWhole() {
    return hasRecords() && breaks() == 0;
  }
}
