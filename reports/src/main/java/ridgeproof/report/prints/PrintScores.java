package ridgeproof.report.prints;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.finding.Finding;
import ridgeproof.ridges.quality.FingerAnalysis;
import ridgeproof.spec.layout.FingerPosition;
import ridgeproof.spec.rule.Severity;

/**
 * Scores that agree with the findings: a print that has to be recaptured ranks below every print
 * that does not have to be, and among its like as its ridges do.
 */
public final class PrintScores {

  private static final String RIDGES = "RDG";
  private static final String POOR = "RP-RDG-017";
  private static final double BEST = 100;

  private final Set<Print> recaptured = new HashSet<>();
  private final double poor;

  public PrintScores(FindingsReport report) {
    ConcernedPrints prints = new ConcernedPrints(report);
    report.everyFinding().stream()
        .filter(PrintScores::asksForRecapture)
        .forEach(finding -> recaptured.addAll(prints.of(finding)));
    poor =
        report.tables().ridgeLimits().stream()
            .filter(limit -> limit.rule().equals(POOR))
            .flatMapToDouble(limit -> limit.least().stream())
            .min()
            .orElse(BEST);
  }

  private static boolean asksForRecapture(Finding finding) {
    return finding.rule().area().equals(RIDGES)
        && finding.severity().worseThan(Severity.ADVICE)
        && finding.location().record().isPresent();
  }

  /** Whether a finding asks for another capture of the print. */
  public boolean isRecaptured(ExaminedImage image, FingerPosition finger) {
    return recaptured.contains(new Print(image, Optional.of(finger)))
        || recaptured.contains(new Print(image, Optional.empty()));
  }

  /**
   * 0 to 100; below the limit of a poor print where the print has to be recaptured, whatever its
   * ridges come to.
   */
  public int of(ExaminedImage image, FingerPosition finger, FingerAnalysis analysis) {
    int value = analysis.score().value();
    return isRecaptured(image, finger)
        ? (int) Math.min(poor - 1, Math.round(value * poor / BEST))
        : value;
  }
}
