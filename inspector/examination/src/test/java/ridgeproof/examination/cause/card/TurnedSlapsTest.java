package ridgeproof.examination.cause.card;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static ridgeproof.examination.cause.MeasuredCard.at;
import static ridgeproof.examination.cause.card.MadeHands.LEFT;
import static ridgeproof.examination.cause.card.MadeHands.LEFT_SLAP;
import static ridgeproof.examination.cause.card.MadeHands.RIGHT;
import static ridgeproof.examination.cause.card.MadeHands.RIGHT_SLAP;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.RidgeImage;
import ridgeproof.examination.SampleCard;
import ridgeproof.examination.cause.card.MadeHands.Print;
import ridgeproof.examination.facts.RidgeAnalysis;
import ridgeproof.examination.facts.RidgeAnalysis.Impression;
import ridgeproof.finding.Finding;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.Turn;
import ridgeproof.ridges.PrintAnalyzer;
import ridgeproof.ridges.quality.ExtentMeasure;
import ridgeproof.ridges.quality.FingerAnalysis;
import ridgeproof.ridges.quality.FingerMeasures;
import ridgeproof.spec.layout.FingerPosition;

/** Pictures of slaps that lie on their side or on their head, which are decoded once more. */
class TurnedSlapsTest {

  private static final Map<String, RidgeAnalysis> SEEN = new HashMap<>();

  private static final Finding[] FOUND = {
    at("RP-SEQ-001", 16, 8),
    at("RP-RDG-002", 16, 8),
    at("RP-IMG-009", 16, 14),
    at("RP-IMG-019", 16, 14),
    at("RP-IMG-016", 16, 14),
    at("RP-RDG-002", 13, 1)
  };

  private static final String OF_SLAP =
      " -> RP-SEQ-001 record 16 finger 8, RP-RDG-002 record 16 finger 8,"
          + " RP-IMG-009 record 16 finger 14, RP-IMG-019 record 16 finger 14";

  private static GrayImage picture(boolean right, Turn turn) {
    return turn.of(right ? SlapImage.of(2, 3, 4, 5) : SlapImage.of(10, 9, 8, 7));
  }

  private static RidgeAnalysis seen(boolean right, Turn turn) {
    return SEEN.computeIfAbsent(
        right + " " + turn,
        key -> {
          List<FingerPosition> places =
              (right ? RIGHT : LEFT)
                  .stream().map(code -> FingerPosition.values()[code - 1]).toList();
          PrintAnalyzer.Seen seen =
              PrintAnalyzer.analyse(picture(right, turn), 500, places, finger -> false);
          return new RidgeAnalysis(Impression.PLAIN, seen.fingers(), seen.slap());
        });
  }

  private static MadeHands slaps(Turn right, Turn left) {
    return MadeHands.on(
            SampleCard.rolledTagged()
                .with(RIGHT_SLAP, old -> RidgeImage.record(13, picture(true, right)))
                .with(LEFT_SLAP, old -> RidgeImage.record(14, picture(false, left))))
        .picture(RIGHT_SLAP, seen(true, right))
        .picture(LEFT_SLAP, seen(false, left));
  }

  private static List<String> told(MadeHands hands) {
    return hands.card().told(new CardCauses(), FOUND).stream()
        .map(line -> line.replaceFirst("; total similarity [0-9.]+", ""))
        .map(
            line ->
                line.replaceFirst("; certainty that the fingertips are at the top -?[0-9.]+", ""))
        .toList();
  }

  @Test
  void slapsThatAreUprightAreNotAccused() {
    assertEquals(List.of(), told(slaps(Turn.NONE, Turn.NONE)));
  }

  @Test
  void withoutRollsBothSlapsUpsideDownAreTheCard() {
    assertEquals(
        List.of(
            "RP-SEQ-021: all 2 images upside down; fingertips at the top"
                + " -> RP-SEQ-001 record 16 finger 8, RP-RDG-002 record 16 finger 8,"
                + " RP-IMG-019 record 16 finger 14, RP-RDG-002 record 13 finger 1"),
        told(slaps(Turn.HALF, Turn.HALF)));
  }

  @Test
  void withoutRollsBothSlapsOnTheirSideAreTheCard() {
    assertEquals(
        List.of(
            "RP-SEQ-025: 2 images turned by 90 degrees; fingertips at the top"
                + OF_SLAP
                + ", RP-RDG-002 record 13 finger 1"),
        told(slaps(Turn.QUARTER_LEFT, Turn.QUARTER_LEFT)));
  }

  @Test
  void withoutRollsOneTurnedSlapIsToldByItself() {
    assertEquals(
        List.of(
            "RP-SEQ-021 record 16 finger 14: image upside down; fingertips at the top" + OF_SLAP),
        told(slaps(Turn.NONE, Turn.HALF)));
    assertEquals(
        List.of(
            "RP-SEQ-025 record 16 finger 14: image turned by 90 degrees; fingertips at the top"
                + OF_SLAP),
        told(slaps(Turn.NONE, Turn.QUARTER_RIGHT)));
  }

  /** A single slap speaks for itself, and for no thumb beside it. */
  @Test
  void theOnlySlapOfACardIsToldByItself() {
    MadeHands one =
        MadeHands.on(
                SampleCard.rolledTagged()
                    .with(LEFT_SLAP, old -> RidgeImage.record(14, picture(false, Turn.HALF))))
            .picture(LEFT_SLAP, seen(false, Turn.HALF));
    String alone =
        "RP-SEQ-021 record 16 finger 14: image upside down; fingertips at the top" + OF_SLAP;
    assertEquals(List.of(alone), told(one));
    assertEquals(List.of(alone), told(one.plain(13, 1, Print.of(1))));
  }

  private static MadeHands withRolls(MadeHands hands) {
    MadeHands all = hands;
    for (int finger = 1; finger <= 10; finger++) {
      all = all.roll(finger, Print.of(finger));
    }
    return all;
  }

  @Test
  void withRollsASlapOnItsSideIsToldByItsPrintsOnceItIsTurned() {
    List<String> told = told(withRolls(slaps(Turn.NONE, Turn.QUARTER_RIGHT)));
    assertEquals(
        List.of(
            "RP-SEQ-025 record 16 finger 14: image turned by 90 degrees; fingertips at the top"),
        told.stream().map(line -> line.replaceFirst("; matching fingers.*", "")).toList());
    assertEquals(OF_SLAP, told.get(0).replaceFirst(".*(?= -> )", ""));
  }

  private static RidgeAnalysis ofAreas(double... areas) {
    Map<FingerPosition, FingerAnalysis> fingers = new EnumMap<>(FingerPosition.class);
    for (int i = 0; i < areas.length; i++) {
      FingerAnalysis print = Print.of(1).analysis();
      FingerMeasures m = print.measures().orElseThrow();
      fingers.put(
          FingerPosition.values()[i],
          new FingerAnalysis(
              List.of(),
              Optional.of(
                  new FingerMeasures(
                      new ExtentMeasure(areas[i], areas[i], 10, 10, null, null),
                      m.flow(),
                      m.tone(),
                      m.clarity(),
                      m.smear(),
                      m.gap(),
                      m.pattern(),
                      m.rotation(),
                      m.minutiae(),
                      m.maps())),
              print.score()));
    }
    return new RidgeAnalysis(Impression.PLAIN, fingers, Optional.empty());
  }

  /** A score of 60 is worth 0.3; the tips are at the top by 0.278, which counts twice. */
  @Test
  void aHandIsKnownByItsPlacesItsWorthAndItsTips() {
    assertEquals(0.856, TurnedPrints.likeHand(ofAreas(200, 200)), 0.001);
    MadeHands placed = MadeHands.none().slap(LEFT_SLAP, LEFT, MadeHands.prints(10, 9, 8, 7));
    assertEquals(
        1.756, TurnedPrints.likeHand(placed.card().image(LEFT_SLAP).ridges().orElseThrow()), 0.001);
  }

  @Test
  void whereMostPrintsAreTooSmallNothingIsKnown() {
    assertEquals(0, TurnedPrints.likeHand(ofAreas(60, 59, 59)));
    assertEquals(0.856, TurnedPrints.likeHand(ofAreas(60, 59)), 0.001);
  }
}
