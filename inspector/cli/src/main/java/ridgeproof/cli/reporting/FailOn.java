package ridgeproof.cli.reporting;

import java.util.Optional;
import ridgeproof.cli.io.ExitStatus;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.Verdict;
import ridgeproof.spec.rule.Severity;

/** From which severity on a finding makes the exit status other than 0. */
public record FailOn(Optional<Severity> least) {

  /** The status of a file: that of its verdict, or as the user asked. */
  public int status(FindingsReport report) {
    int byVerdict = ExitStatus.of(report.verdict());
    if (least.isEmpty() || report.verdict() == Verdict.UNREADABLE) {
      return byVerdict;
    }
    boolean met = report.findings().stream().anyMatch(f -> !least.get().worseThan(f.severity()));
    return met ? Math.max(ExitStatus.of(Verdict.REVIEW), byVerdict) : ExitStatus.OK;
  }
}
