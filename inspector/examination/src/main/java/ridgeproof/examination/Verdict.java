package ridgeproof.examination;

import java.util.List;
import ridgeproof.finding.Finding;
import ridgeproof.spec.rule.Severity;
import ridgeproof.transaction.Transaction;

/** What the findings come to; the later the worse. */
public enum Verdict {
  /** Nothing found that a bureau objects to. */
  READY,
  /** Something is commonly rejected or will not match. */
  REVIEW,
  /** A bureau that follows the sources will reject the file. */
  HOLD,
  /** The file cannot be read as a transaction. */
  UNREADABLE;

  static Verdict of(Transaction transaction, List<Finding> findings) {
    if (transaction.records().isEmpty()) {
      return UNREADABLE;
    }
    if (has(findings, Severity.BLOCKING)) {
      return HOLD;
    }
    return has(findings, Severity.LIKELY) ? REVIEW : READY;
  }

  private static boolean has(List<Finding> findings, Severity severity) {
    return findings.stream().anyMatch(finding -> finding.severity() == severity);
  }
}
