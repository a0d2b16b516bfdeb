package ridgeproof.examination.cause.card;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static ridgeproof.examination.cause.MeasuredCard.at;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.SampleCard;
import ridgeproof.examination.cause.CauseLog;
import ridgeproof.examination.cause.Consequences;
import ridgeproof.examination.cause.Established;
import ridgeproof.examination.cause.MeasuredCard;
import ridgeproof.examination.facts.RidgeAnalysis;
import ridgeproof.examination.facts.RidgeAnalysis.Impression;
import ridgeproof.examination.facts.SequenceComparison;
import ridgeproof.examination.facts.SequenceComparison.SeenFinger;
import ridgeproof.finding.Finding;
import ridgeproof.ridges.map.RotatedBox;
import ridgeproof.ridges.matching.SequenceResult;
import ridgeproof.ridges.segmentation.Segment;
import ridgeproof.ridges.segmentation.Slap;
import ridgeproof.spec.layout.FingerPosition;

/** Slaps that changed places, where no roll tells: both have the shape of the other hand. */
class OtherHandCauseTest {

  private static final String RULE = "RP-SEQ-027";

  /** A slap of fingers 60 pixels wide, each with its tip so much lower than the one before. */
  private static RidgeAnalysis slap(double lower, int... fingers) {
    List<Segment> segments = new ArrayList<>();
    for (int i = 0; i < fingers.length; i++) {
      RotatedBox box = new RotatedBox(70 * i, 100 + i * lower, 60, 100, 0);
      segments.add(
          new Segment(
              FingerPosition.values()[fingers[i] - 1], Optional.of(box), 0.9, 200, List.of()));
    }
    return new RidgeAnalysis(
        Impression.PLAIN, Map.of(), Optional.of(new Slap(segments, 0, Optional.empty())));
  }

  private static MeasuredCard slaps(double right, double left) {
    return MeasuredCard.ofRolls()
        .ridges(15, slap(right, 2, 3, 4, 5))
        .ridges(16, slap(left, 10, 9, 8, 7));
  }

  private static List<String> told(MeasuredCard card, Finding... found) {
    return card.told(new OtherHandCause(), found);
  }

  @Test
  void bothSlapsOfTheOtherHandAreSwapped() {
    assertEquals(
        List.of(
            "RP-SEQ-027: in both slaps, the fingers have the heights and widths of the other hand;"
                + " each hand in its own position;"
                + " likeness to the hand named by the position -2 (limit -2)"
                + " -> RP-SEQ-010 record 15 finger 13, RP-RDG-021 record 16 finger 7"),
        told(
            slaps(-20, 20),
            at("RP-SEQ-010", 15, 13),
            at("RP-RDG-021", 16, 7),
            at("RP-SEQ-001", 15, 2),
            at("RP-RDG-020", 16, 7)));
    assertEquals(Set.of(RULE), new OtherHandCause().ids());
  }

  @Test
  void slapsOfTheirOwnHandOrOfNoClearShapeAreNot() {
    assertEquals(List.of(), told(slaps(20, -20)));
    assertEquals(List.of(), told(slaps(-19.5, 20)));
    assertEquals(List.of(), told(slaps(-30, -30)));
  }

  @Test
  void oneSlapTwoOfOneHandOrThreeTellNothing() {
    assertEquals(List.of(), told(MeasuredCard.ofRolls().ridges(15, slap(-50, 2, 3, 4, 5))));
    assertEquals(
        List.of(),
        told(
            MeasuredCard.ofRolls()
                .ridges(15, slap(-50, 2, 3, 4, 5))
                .ridges(16, slap(-50, 2, 3, 4, 5))));
    assertEquals(List.of(), told(slaps(-50, 50).ridges(14, slap(-50, 2, 3, 4, 5))));
  }

  @Test
  void anImageOfBothHandsOrOfTwoFingersHasNoShape() {
    assertEquals(1, told(slaps(-20, 20).ridges(14, slap(90, 6, 1))).size());
    assertEquals(1, told(slaps(-20, 20).ridges(14, slap(90, 7, 6, 1, 2))).size());
  }

  @Test
  void whereRollsTellTheHandsTheirShapeDoesNot() {
    MeasuredCard card = slaps(-20, 20);
    SequenceResult result = new SequenceResult(List.of(), List.of(), 40);
    SeenFinger roll = new SeenFinger(card.image(4), MadeHands.Print.of(2).analysis());
    assertEquals(
        List.of(),
        told(
            card.compared(
                new SequenceComparison(
                    result, Map.of(FingerPosition.RIGHT_INDEX, roll), Map.of()))));
    assertEquals(1, told(card.compared(result)).size());
  }

  @Test
  void slapsThatAreTurnedAreNotSaidToBeSwappedToo() {
    for (String known : List.of("RP-SEQ-021", "RP-IMG-040")) {
      CauseLog log = new CauseLog(SampleCard.TABLES);
      log.add(Established.finding(known), Consequences.none());
      new OtherHandCause().establish(slaps(-20, 20).examinee(), List.of(), log);
      assertEquals(
          known.equals("RP-SEQ-021") ? List.of(known) : List.of(known, RULE),
          log.causes().stream().map(cause -> cause.finding().ruleId()).toList());
    }
  }
}
