package ridgeproof.examination.rules.ridges;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.MarkedSegment;
import ridgeproof.examination.facts.RidgeAnalysis;
import ridgeproof.examination.facts.RidgeAnalysis.Impression;
import ridgeproof.examination.rules.Rule;
import ridgeproof.examination.rules.ridges.RidgeLimitEvaluator.Broken;
import ridgeproof.finding.FindingLog;
import ridgeproof.finding.Location;
import ridgeproof.finding.Measure;
import ridgeproof.finding.Observed;
import ridgeproof.ridges.map.RotatedBox;
import ridgeproof.ridges.quality.QualityMetric;
import ridgeproof.ridges.segmentation.Segment.Doubt;
import ridgeproof.ridges.segmentation.Slap;
import ridgeproof.spec.consistency.SegmentField;
import ridgeproof.spec.layout.FingerPosition;

/** Images of several fingers show each of them, upright, where the record says. */
final class SlapRule implements Rule {

  private static final String NO_CORE = "RP-RDG-008";
  private static final String TILTED = "RP-RDG-009";
  private static final String NOT_FOUND = "RP-RDG-020";
  private static final String ELSEWHERE = "RP-RDG-021";

  @Override
  public Set<String> ids() {
    return Set.of(NO_CORE, TILTED, NOT_FOUND, ELSEWHERE);
  }

  @Override
  public void check(ExaminationInput examinee, FindingLog log) {
    if (!examinee.hasRidges()) {
      return;
    }
    RidgeLimitEvaluator judge = new RidgeLimitEvaluator(examinee.tables().ridgeLimits());
    double middle = examinee.tables().pixelLimits().limit("segment-centre").share();
    List<SegmentField> layouts =
        examinee.tables().agreements().segmentFields().stream()
            .filter(layout -> layout.positionItem().isPresent())
            .toList();
    for (ExaminedImage image : examinee.images()) {
      Optional<Slap> slap = image.ridges().flatMap(RidgeAnalysis::slap);
      if (slap.isPresent()) {
        checkFingers(image, slap.get(), log);
        faultsOfHand(image.ridges().get(), judge)
            .forEach((rule, broken) -> RidgeLimitsRule.report(rule, image.location(), broken, log));
        layouts.forEach(layout -> checkBoxes(image, slap.get(), layout, middle, log));
      }
    }
  }

  /** Where the places of the prints leave open which finger has none, no finger is named. */
  private static void checkFingers(ExaminedImage image, Slap slap, FindingLog log) {
    long found = slap.segments().stream().filter(segment -> segment.box().isPresent()).count();
    boolean ambiguous =
        slap.segments().stream()
            .anyMatch(segment -> segment.doubts().contains(Doubt.PLACE_AMBIGUOUS));
    if (ambiguous) {
      report(
          image.location(), found, slap, "their places do not show which finger is missing", log);
      return;
    }
    for (ridgeproof.ridges.segmentation.Segment segment : slap.segments()) {
      if (segment.box().isEmpty()) {
        Location place = image.location(segment.position());
        report(place, found, slap, "none where this finger belongs", log);
      }
    }
  }

  private static void report(Location place, long found, Slap slap, String which, FindingLog log) {
    int due = slap.segments().size();
    log.add(
        NOT_FOUND,
        place,
        Observed.of(String.format(Locale.ROOT, "%d of %d prints; %s", found, due, which)),
        "a print of each finger that is not annotated as missing",
        List.of(Measure.against("prints found", found, "prints", due)));
  }

  /** What is at fault with all fingers together, told once of the image. */
  static Map<String, List<Broken>> faultsOfHand(RidgeAnalysis facts, RidgeLimitEvaluator judge) {
    return facts
        .slap()
        .map(
            slap ->
                judge.faults(
                    Impression.PLAIN,
                    measure ->
                        switch (measure) {
                          case HAND_ROTATION -> OptionalDouble.of(Math.abs(slap.degrees()));
                          case HAND_CORE_TO_BORDER ->
                              QualityMetric.handCoreToBorder(facts.fingers().values());
                          default -> OptionalDouble.empty();
                        }))
        .orElse(Map.of());
  }

  private static void checkBoxes(
      ExaminedImage image, Slap slap, SegmentField layout, double middle, FindingLog log) {
    for (MarkedSegment marked : MarkedSegment.of(image, layout)) {
      Optional<FingerPosition> finger =
          marked.position().isPresent()
              ? FingerPosition.ofCode(marked.position().getAsInt())
              : Optional.empty();
      Optional<RotatedBox> found = finger.flatMap(name -> found(slap, name));
      if (found.isPresent() && !marked.isEmpty() && !holds(marked, found.get(), middle)) {
        log.add(
            ELSEWHERE,
            marked.place(),
            Observed.of("segment at " + marked.extent()),
            String.format(
                Locale.ROOT,
                "a segment around the print at %.0f across, %.0f down",
                found.get().centreX(),
                found.get().centreY()));
      }
    }
  }

  private static Optional<RotatedBox> found(Slap slap, FingerPosition finger) {
    return slap.segments().stream()
        .filter(segment -> segment.position() == finger)
        .flatMap(segment -> segment.box().stream())
        .findFirst();
  }

  /** Whether the middle of the print lies within the middle of what is marked, loosely. */
  private static boolean holds(MarkedSegment marked, RotatedBox found, double middle) {
    double across = Math.abs(found.centreX() - marked.doubleCentre() / 2.0);
    double down = Math.abs(found.centreY() - (marked.top() + marked.bottom()) / 2.0);
    return across <= middle * (marked.right() - marked.left())
        && down <= middle * (marked.bottom() - marked.top());
  }
}
