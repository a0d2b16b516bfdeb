package ridgeproof.examination.comparison;

import java.util.List;
import java.util.Optional;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.finding.Finding;
import ridgeproof.ridges.quality.FingerAnalysis;
import ridgeproof.spec.rule.Severity;

/**
 * One capture of a finger in a transaction.
 *
 * @param image the image it is in, alone or among others
 * @param analysis of its ridges; empty where they were not looked at
 * @param problems what was found of it, mere facts left out, the worst first
 */
public record FingerCapture(
    ExaminedImage image, Optional<FingerAnalysis> analysis, List<Finding> problems) {

  /** Scores nearer to each other than this do not tell two captures apart. */
  public static final int MIN_STEP = 5;

  public FingerCapture {
    problems = List.copyOf(problems);
  }

  /** Of its ridges, 0 to 100; empty where they were not looked at. */
  public Optional<Integer> score() {
    return analysis.map(found -> found.score().value());
  }

  /** Whether something found of it is commonly rejected or worse. */
  public boolean isDoubtful() {
    return problems.stream().anyMatch(f -> f.severity().worseThan(Severity.ADVICE));
  }

  /** Above 0 where this one is the better to send, below where the other is, 0 where either is. */
  int better(FingerCapture other) {
    int grave = Boolean.compare(other.isDoubtful(), isDoubtful());
    if (grave != 0) {
      return grave;
    }
    int step = score().orElse(0) - other.score().orElse(0);
    return Math.abs(step) < MIN_STEP ? 0 : step;
  }
}
