package ridgeproof.examination.cause.card;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import ridgeproof.examination.cause.CauseLog;
import ridgeproof.examination.cause.CauseRule;
import ridgeproof.examination.cause.Consequences;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.RidgeAnalysis;
import ridgeproof.finding.Finding;
import ridgeproof.finding.Location;
import ridgeproof.finding.Measure;
import ridgeproof.finding.Observed;
import ridgeproof.ridges.segmentation.HandShape;
import ridgeproof.ridges.segmentation.Slap;
import ridgeproof.spec.layout.FingerPosition.Hand;

/**
 * Both slaps together look like each other's hand, where no roll says more. A single slap is weak
 * evidence; two that are both wrong are not.
 */
public final class OtherHandCause implements CauseRule {

  private static final String RULE = "RP-SEQ-027";

  /** Of both slaps together; sound pairs come to more than 2.5 on the other side. */
  private static final double CLEARLY = 2;

  @Override
  public Set<String> ids() {
    return Set.of(RULE);
  }

  @Override
  public void establish(ExaminationInput examinee, List<Finding> found, CauseLog causes) {
    boolean compared = examinee.sequence().filter(facts -> !facts.rolls().isEmpty()).isPresent();
    boolean known = causes.causes().stream().anyMatch(cause -> isOfHands(cause.finding()));
    if (compared || known) {
      return;
    }
    List<Double> shapes = new ArrayList<>();
    Set<Hand> hands = new TreeSet<>();
    for (ExaminedImage image : examinee.images()) {
      image.ridges().flatMap(RidgeAnalysis::slap).ifPresent(slap -> add(slap, shapes, hands));
    }
    double own = shapes.stream().mapToDouble(shape -> shape).sum();
    if (hands.size() == 2 && shapes.size() == 2 && own <= -CLEARLY) {
      causes.add(
          RULE,
          Location.file(),
          Observed.of("in both slaps, the fingers have the heights and widths of the other hand"),
          "each hand in its own position",
          List.of(Measure.against("likeness to the hand named by the position", own, "", -CLEARLY)),
          Consequences.ofRules("RP-SEQ-010", "RP-RDG-021"));
    }
  }

  private static boolean isOfHands(Finding finding) {
    return finding.ruleId().startsWith("RP-SEQ-02");
  }

  private static void add(Slap slap, List<Double> shapes, Set<Hand> hands) {
    OptionalDouble shape = HandShape.of(slap);
    Set<Hand> named = new TreeSet<>();
    slap.segments().forEach(segment -> named.add(segment.position().hand()));
    if (shape.isPresent() && named.size() == 1) {
      hands.addAll(named);
      shapes.add(named.contains(Hand.RIGHT) ? shape.getAsDouble() : -shape.getAsDouble());
    }
  }
}
