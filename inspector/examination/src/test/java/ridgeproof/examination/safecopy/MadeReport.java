package ridgeproof.examination.safecopy;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.RecommendedAction;
import ridgeproof.examination.SampleCard;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.SequenceComparison;
import ridgeproof.finding.CausedBy;
import ridgeproof.finding.Finding;
import ridgeproof.finding.FindingLog;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;
import ridgeproof.ridges.matching.FingerMatchResult;
import ridgeproof.ridges.matching.SequenceError;
import ridgeproof.ridges.matching.SequenceResult;
import ridgeproof.spec.rule.Severity;

/** Reports that find what a test says. */
final class MadeReport {

  private static final double THRESHOLD = 40;

  private MadeReport() {}

  static Finding finding(String rule, Location place) {
    return finding(rule, place, "observed");
  }

  static Finding finding(String rule, Location place, String observed) {
    FindingLog log = new FindingLog(SampleCard.TABLES, 1);
    log.add(rule, place, Observed.of(observed), "required");
    return log.findings().get(0);
  }

  static Finding severe(Severity severity, Location place) {
    return finding("RP-FLD-001", place).withSeverity(severity);
  }

  static Finding caused(String rule, Location place, String cause) {
    return finding(rule, place).causedBy(new CausedBy(cause, Location.file()));
  }

  /** A report that finds these, and has something to do about each, in their order. */
  static FindingsReport of(FindingsReport base, Finding... findings) {
    return of(base, base.images(), Optional.empty(), findings);
  }

  static FindingsReport of(FindingsReport base, List<ExaminedImage> images, Finding... findings) {
    return of(base, images, Optional.empty(), findings);
  }

  /** A report of a sequence check. */
  static FindingsReport of(
      FindingsReport base,
      List<FingerMatchResult> answers,
      List<SequenceError> irregularities,
      Finding... findings) {
    SequenceComparison sequence =
        new SequenceComparison(
            new SequenceResult(answers, irregularities, THRESHOLD), Map.of(), Map.of());
    return of(base, base.images(), Optional.of(sequence), findings);
  }

  private static FindingsReport of(
      FindingsReport base,
      List<ExaminedImage> images,
      Optional<SequenceComparison> sequence,
      Finding... findings) {
    List<RecommendedAction> actions = new ArrayList<>();
    for (Finding finding : findings) {
      actions.add(new RecommendedAction(finding.remedy(), finding.severity(), List.of(finding)));
    }
    return with(base, images, sequence, List.of(findings), actions);
  }

  static FindingsReport withActions(FindingsReport base, RecommendedAction... actions) {
    return with(base, base.images(), Optional.empty(), List.of(), List.of(actions));
  }

  private static FindingsReport with(
      FindingsReport base,
      List<ExaminedImage> images,
      Optional<SequenceComparison> sequence,
      List<Finding> findings,
      List<RecommendedAction> actions) {
    LocalDate asOf = base.asOf();
    return new FindingsReport(
        base.transaction(),
        base.tables(),
        base.depth(),
        asOf,
        images,
        base.profile(),
        base.profileNamed(),
        base.relaxed(),
        findings,
        findings,
        actions,
        sequence,
        base.verdict());
  }
}
