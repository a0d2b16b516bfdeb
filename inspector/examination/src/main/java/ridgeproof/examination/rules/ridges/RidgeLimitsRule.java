package ridgeproof.examination.rules.ridges;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.RidgeAnalysis;
import ridgeproof.examination.facts.RidgeAnalysis.Impression;
import ridgeproof.examination.rules.Rule;
import ridgeproof.examination.rules.ridges.RidgeLimitEvaluator.Broken;
import ridgeproof.finding.FindingLog;
import ridgeproof.finding.Location;
import ridgeproof.finding.Measure;
import ridgeproof.finding.Observed;
import ridgeproof.ridges.quality.FingerAnalysis;
import ridgeproof.ridges.quality.QualityMetric;
import ridgeproof.spec.layout.FingerPosition;

/** Each print keeps to the limits of its ridges. */
final class RidgeLimitsRule implements Rule {

  private static final String NO_RIDGES = "RP-RDG-001";
  private static final String TILTED = "RP-RDG-009";
  private static final String PERIOD = "RP-RDG-013";
  private static final String POOR = "RP-RDG-017";

  private static final Set<String> PERIOD_OF_IMAGE = Set.of("RP-IMG-039", "RP-IMG-040");

  @Override
  public Set<String> ids() {
    return Set.of(
        NO_RIDGES,
        "RP-RDG-002",
        "RP-RDG-003",
        "RP-RDG-004",
        "RP-RDG-005",
        "RP-RDG-006",
        "RP-RDG-007",
        "RP-RDG-008",
        TILTED,
        "RP-RDG-010",
        "RP-RDG-011",
        "RP-RDG-012",
        PERIOD,
        "RP-RDG-014",
        "RP-RDG-015",
        POOR);
  }

  @Override
  public void check(ExaminationInput examinee, FindingLog log) {
    if (!examinee.hasRidges()) {
      return;
    }
    RidgeLimitEvaluator judge = new RidgeLimitEvaluator(examinee.tables().ridgeLimits());
    for (ExaminedImage image : examinee.images()) {
      image
          .ridges()
          .ifPresent(
              facts -> {
                Set<String> ofHand = SlapRule.faultsOfHand(facts, judge).keySet();
                facts
                    .fingers()
                    .forEach(
                        (finger, analysis) ->
                            check(image, facts, finger, analysis, ofHand, judge, examinee, log));
              });
    }
  }

  private static void check(
      ExaminedImage image,
      RidgeAnalysis facts,
      FingerPosition finger,
      FingerAnalysis analysis,
      Set<String> ofHand,
      RidgeLimitEvaluator judge,
      ExaminationInput examinee,
      FindingLog log) {
    Location place = facts.slap().isEmpty() ? image.location() : image.location(finger);
    if (analysis.measures().isEmpty()) {
      log.add(NO_RIDGES, place, Observed.of("no ridges"), "a print");
      return;
    }
    OptionalDouble toPlain = rollToPlain(facts, finger, analysis, examinee);
    Map<String, List<Broken>> faults =
        judge.faults(
            facts.impression(),
            measure ->
                measure == QualityMetric.ROLL_TO_PLAIN_WIDTH ? toPlain : measure.of(analysis));
    Set<String> told = new TreeSet<>(faults.keySet());
    if (facts.slap().isPresent()) {
      // The tilt of a hand is told once, of the image, as is what else all its fingers share.
      told.remove(TILTED);
      told.removeAll(ofHand);
    }
    if (told.contains(PERIOD) && isToldOfImage(image, log)) {
      told.remove(PERIOD);
    }
    if (told.size() > 1) {
      told.remove(POOR);
    }
    told.forEach(rule -> report(rule, place, faults.get(rule), log));
  }

  private static OptionalDouble rollToPlain(
      RidgeAnalysis facts,
      FingerPosition finger,
      FingerAnalysis analysis,
      ExaminationInput examinee) {
    return facts.impression() != Impression.ROLLED
        ? OptionalDouble.empty()
        : examinee
            .sequence()
            .flatMap(sequence -> Optional.ofNullable(sequence.plains().get(finger)))
            .map(plain -> QualityMetric.rollToPlain(analysis, plain.analysis()))
            .orElse(OptionalDouble.empty());
  }

  private static boolean isToldOfImage(ExaminedImage image, FindingLog log) {
    return log.findings().stream()
        .filter(finding -> PERIOD_OF_IMAGE.contains(finding.ruleId()))
        .map(finding -> finding.location().record())
        .anyMatch(record -> record.isEmpty() || record.getAsInt() == image.record().ordinal());
  }

  static void report(String rule, Location place, List<Broken> broken, FindingLog log) {
    List<Broken> telling = telling(broken);
    log.add(
        rule,
        place,
        Observed.of(
            telling.stream()
                .map(b -> b.measure().title() + ": " + amount(b, b.value()))
                .collect(Collectors.joining("; "))),
        telling.stream().map(RidgeLimitsRule::required).collect(Collectors.joining("; ")),
        Optional.of(broken.get(0).limit().source()),
        broken.stream()
            .map(b -> Measure.against(b.measure().title(), b.value(), b.limit().unit(), b.bound()))
            .toList());
  }

  /** What the person at the station can see; the others only say how sure that is. */
  private static List<Broken> telling(List<Broken> broken) {
    List<Broken> telling = broken.stream().filter(b -> !isCondition(b.measure())).toList();
    return telling.isEmpty() ? broken : telling;
  }

  private static String required(Broken broken) {
    String side = broken.value() < broken.bound() ? " at least " : " at most ";
    return broken.measure().title() + side + amount(broken, broken.bound());
  }

  /** The unit is left out where the title has said it. */
  private static String amount(Broken broken, double value) {
    String amount = broken.limit().amount(value);
    return broken.measure().unit() == QualityMetric.Unit.GRAY_LEVELS
        ? amount.replace(" " + broken.limit().unit(), "")
        : amount;
  }

  /** Whether a measure only says how sure another one is, or whether it matters. */
  private static boolean isCondition(QualityMetric measure) {
    return switch (measure) {
      case ROTATION_CONFIDENCE, PATTERN_CONFIDENCE, SCORE, WIDTH_TO_LENGTH -> true;
      default -> false;
    };
  }
}
