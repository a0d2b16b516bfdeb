package ridgeproof.examination.cause.card;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static ridgeproof.examination.cause.MeasuredCard.at;
import static ridgeproof.examination.cause.card.MadeHands.LEFT;
import static ridgeproof.examination.cause.card.MadeHands.LEFT_SLAP;
import static ridgeproof.examination.cause.card.MadeHands.RIGHT;
import static ridgeproof.examination.cause.card.MadeHands.RIGHT_SLAP;
import static ridgeproof.examination.cause.card.MadeHands.prints;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.cause.card.MadeHands.Print;
import ridgeproof.examination.facts.Depth;
import ridgeproof.finding.Finding;
import ridgeproof.imagery.Turn;

/**
 * What happened to many images of a card at once is one cause, and explains no finger beyond it.
 */
class CardCausesTest {

  private static final Finding[] FOUND = {
    at("RP-SEQ-001", 4, 2),
    at("RP-SEQ-001", 10, 8),
    at("RP-SEQ-008", 16, 14),
    at("RP-RDG-002", 4, 2),
    at("RP-RDG-002", 16, 8),
    at("RP-RDG-021", 16, 8),
    at("RP-IMG-009", 16, 14),
    at("RP-IMG-019", 16, 14),
    at("RP-IMG-016", 16, 14)
  };

  private static final String SEQ =
      "RP-SEQ-001 record 4 finger 2, RP-SEQ-001 record 10 finger 8, RP-SEQ-008 record 16 finger 14";

  private static final String OF_LEFT_SLAP =
      " -> RP-SEQ-001 record 10 finger 8, RP-SEQ-008 record 16 finger 14,"
          + " RP-RDG-002 record 16 finger 8, RP-RDG-021 record 16 finger 8,"
          + " RP-IMG-009 record 16 finger 14, RP-IMG-019 record 16 finger 14";

  static List<String> told(MadeHands hands) {
    return hands.card().told(new CardCauses(), FOUND).stream()
        .map(line -> line.replaceFirst("; total similarity [0-9.]+", ""))
        .toList();
  }

  static Print[] each(UnaryOperator<Print> change, int... fingers) {
    return Arrays.stream(prints(fingers)).map(change).toArray(Print[]::new);
  }

  private static MadeHands rolls(UnaryOperator<Print> change) {
    MadeHands hands = MadeHands.none();
    for (int finger = 1; finger <= 10; finger++) {
      hands = hands.roll(finger, change.apply(Print.of(finger)));
    }
    return hands;
  }

  private static MadeHands slaps(MadeHands hands, UnaryOperator<Print> change) {
    return hands
        .slap(RIGHT_SLAP, RIGHT, each(change, 2, 3, 4, 5))
        .slap(LEFT_SLAP, LEFT, each(change, 10, 9, 8, 7));
  }

  private static MadeHands reversed(MadeHands hands, UnaryOperator<Print> change) {
    return hands
        .slap(RIGHT_SLAP, RIGHT, each(change, 5, 4, 3, 2))
        .slap(LEFT_SLAP, LEFT, each(change, 7, 8, 9, 10));
  }

  private static MadeHands sound() {
    return slaps(MadeHands.rolls(), print -> print);
  }

  private static Print upsideDown(Print print) {
    return print.turned(Turn.HALF);
  }

  private static Print tipDown(Print print) {
    return print.withTip(Turn.HALF);
  }

  @Test
  void aSoundCardIsNotAccused() {
    assertEquals(List.of(), told(sound()));
    assertEquals(List.of(), told(sound().plain(13, 1, Print.of(1)).plain(14, 6, Print.of(6))));
  }

  @Test
  void aCardOfWhichTheRidgesWereNotReadIsNotAccused() {
    assertEquals(
        List.of(),
        reversed(MadeHands.rolls(), print -> print)
            .card()
            .depth(Depth.IMAGES)
            .told(new CardCauses()));
  }

  @Test
  void everySlapInReverseOrder() {
    assertEquals(
        List.of(
            "RP-SEQ-020: the fingers of every slap are in reverse order;"
                + " the fingers of each slap in their natural order; matching fingers 8 -> "
                + SEQ
                + ", RP-RDG-021 record 16 finger 8, RP-IMG-019 record 16 finger 14"),
        told(reversed(MadeHands.rolls(), print -> print)));
  }

  @Test
  void everySlapInReverseOrderWithTheTipsAtTheBottomIsUpsideDownWithTheRolls() {
    assertEquals(
        List.of(
            "RP-SEQ-021: all 12 images upside down; fingertips at the top;"
                + " certainty that the fingertips are at the top -0.28 -> "
                + SEQ
                + ", RP-RDG-002 record 4 finger 2, RP-RDG-002 record 16 finger 8,"
                + " RP-RDG-021 record 16 finger 8, RP-IMG-019 record 16 finger 14"),
        told(reversed(rolls(CardCausesTest::tipDown), CardCausesTest::tipDown)));
  }

  @Test
  void allInOrderWithTheTipsAtTheBottomIsMirroredFromTopToBottom() {
    assertEquals(
        List.of(
            "RP-SEQ-022: all 12 images mirrored from top to bottom;"
                + " images that are not mirrored;"
                + " certainty that the fingertips are at the top -0.28 -> "
                + SEQ
                + ", RP-RDG-002 record 4 finger 2, RP-RDG-002 record 16 finger 8,"
                + " RP-RDG-021 record 16 finger 8, RP-IMG-019 record 16 finger 14"),
        told(slaps(rolls(CardCausesTest::tipDown), CardCausesTest::tipDown)));
    // The tips of the rolls are at the top, of the slaps not: on the whole nothing is clear.
    assertEquals(List.of(), told(slaps(MadeHands.rolls(), CardCausesTest::tipDown)));
  }

  private static MadeHands filed(int by) {
    MadeHands hands = MadeHands.none();
    for (int finger = 1; finger <= 10; finger++) {
      hands = hands.roll((finger - 1 + by) % 10 + 1, Print.of(finger));
    }
    return hands;
  }

  @Test
  void allRollsInTheNextBox() {
    assertEquals(
        List.of(
            "RP-SEQ-026: 8 rolled prints are in the position after their own;"
                + " each rolled print in its own position; matching fingers 8 -> "
                + SEQ),
        told(slaps(filed(1), print -> print)));
    assertEquals(
        List.of(
            "RP-SEQ-026: 8 rolled prints are in the position before their own;"
                + " each rolled print in its own position; matching fingers 8 -> "
                + SEQ),
        told(slaps(filed(9), print -> print)));
  }

  /** The rolls of the left index to ring finger are each in the next box. */
  private static MadeHands leftShifted() {
    return MadeHands.rolls()
        .roll(7, Print.of(20))
        .roll(8, Print.of(7))
        .roll(9, Print.of(8))
        .roll(10, Print.of(9))
        .slap(RIGHT_SLAP, RIGHT, prints(2, 3, 4, 5));
  }

  @Test
  void rollsOfOneHandInTheNextBoxExplainFindingsOfThatHandAlone() {
    assertEquals(
        List.of(
            "RP-SEQ-026: 3 rolled prints are in the position after their own;"
                + " each rolled print in its own position; matching fingers 3"
                + " -> RP-SEQ-001 record 10 finger 8, RP-SEQ-008 record 16 finger 14"),
        told(leftShifted().slap(LEFT_SLAP, LEFT, prints(10, 9, 8, 7))));
  }

  @Test
  void twoFingersInTheNextBoxAreNotShifted() {
    Print[] two = prints(10, 9, 8, 7);
    two[3] = Print.of(21);
    assertEquals(List.of(), told(leftShifted().slap(LEFT_SLAP, LEFT, two)));
  }

  @Test
  void allRollsMirrored() {
    assertEquals(
        List.of(
            "RP-SEQ-022: all 10 rolled prints mirrored; images that are not mirrored;"
                + " matching fingers 8 -> "
                + SEQ),
        told(slaps(rolls(Print::mirror), print -> print)));
  }

  @Test
  void allRollsUpsideDown() {
    assertEquals(
        List.of(
            "RP-SEQ-021: all 10 rolled prints upside down; fingertips at the top;"
                + " matching fingers 8 -> "
                + SEQ
                + ", RP-RDG-002 record 4 finger 2"),
        told(slaps(rolls(CardCausesTest::upsideDown), print -> print)));
  }

  @Test
  void oneSlapMirroredExplainsItsFingersAndItsRecord() {
    String mirrored =
        "RP-SEQ-022 record 16 finger 14: image mirrored; images that are not mirrored;"
            + " matching fingers 4"
            + OF_LEFT_SLAP;
    assertEquals(
        List.of(mirrored), told(sound().slap(LEFT_SLAP, LEFT, each(Print::mirror, 7, 8, 9, 10))));
    // From top to bottom: in its order, and upside down.
    assertEquals(
        List.of(mirrored),
        told(
            sound().slap(LEFT_SLAP, LEFT, each(print -> upsideDown(print).mirror(), 10, 9, 8, 7))));
  }

  @Test
  void oneSlapUpsideDownExplainsItsFingersAndItsRecord() {
    assertEquals(
        List.of(
            "RP-SEQ-021 record 16 finger 14: image upside down; fingertips at the top;"
                + " matching fingers 4"
                + OF_LEFT_SLAP),
        told(sound().slap(LEFT_SLAP, LEFT, each(CardCausesTest::upsideDown, 7, 8, 9, 10))));
  }

  @Test
  void oneSlapOnItsSideExplainsItsFingersAndItsRecord() {
    for (Turn quarter : List.of(Turn.QUARTER_LEFT, Turn.QUARTER_RIGHT)) {
      assertEquals(
          List.of(
              "RP-SEQ-025 record 16 finger 14: image turned by 90 degrees; fingertips at the top;"
                  + " matching fingers 4"
                  + OF_LEFT_SLAP),
          told(sound().slap(LEFT_SLAP, LEFT, each(print -> print.turned(quarter), 7, 8, 9, 10))));
    }
  }

  @Test
  void bothSlapsAreOneFindingOfTheFile() {
    assertEquals(
        List.of(
            "RP-SEQ-021: 2 images upside down; fingertips at the top; matching fingers 8 -> "
                + SEQ
                + ", RP-RDG-002 record 16 finger 8, RP-RDG-021 record 16 finger 8,"
                + " RP-IMG-009 record 16 finger 14, RP-IMG-019 record 16 finger 14"),
        told(reversed(MadeHands.rolls(), CardCausesTest::upsideDown)));
    assertEquals(
        List.of(
            "RP-SEQ-022: 3 images mirrored; images that are not mirrored; matching fingers 9 -> "
                + SEQ
                + ", RP-RDG-002 record 16 finger 8, RP-RDG-021 record 16 finger 8,"
                + " RP-IMG-009 record 16 finger 14, RP-IMG-019 record 16 finger 14"),
        told(reversed(MadeHands.rolls(), Print::mirror).plain(13, 1, Print.of(1).mirror())).stream()
            .filter(line -> line.startsWith("RP-SEQ-022"))
            .toList());
  }

  @Test
  void whatWasDoneToAllImagesIsNotSaidOfOneOfThemAgain() {
    assertEquals(
        List.of("RP-SEQ-022"),
        rules(
            slaps(rolls(CardCausesTest::tipDown), CardCausesTest::tipDown)
                .roll(2, tipDown(Print.of(2)).mirror())));
    assertEquals(
        List.of("RP-SEQ-022"),
        rules(slaps(rolls(Print::mirror), print -> print).plain(13, 1, Print.of(1))));
  }

  private static List<String> rules(MadeHands hands) {
    return told(hands).stream().map(line -> line.substring(0, 10)).toList();
  }

  @Test
  void tipsAtTheBottomAreNoMirroredCardWhereASlapIsMirroredByItself() {
    assertEquals(
        List.of(
            "RP-SEQ-022 record 16 finger 14: image mirrored; images that are not mirrored;"
                + " matching fingers 4"
                + OF_LEFT_SLAP),
        told(
            slaps(rolls(CardCausesTest::tipDown), CardCausesTest::tipDown)
                .slap(LEFT_SLAP, LEFT, each(print -> tipDown(print).mirror(), 7, 8, 9, 10))));
  }

  @Test
  void allRollsInTheNextBoxExplainWhatIsSaidOfTheThumbsToo() {
    List<String> told =
        slaps(filed(1), print -> print).card().told(new CardCauses(), at("RP-SEQ-001", 3, 1));
    assertEquals(1, told.size());
    assertEquals("RP-SEQ-001 record 3 finger 1", told.get(0).replaceFirst(".* -> ", ""));
  }

  /** Of each slap two fingers match the roll in the next box. */
  private static MadeHands twoOfEach(int thirdRight) {
    return filed(1)
        .slap(RIGHT_SLAP, RIGHT, prints(2, 3, thirdRight, 41))
        .slap(LEFT_SLAP, LEFT, prints(42, 43, 8, 7));
  }

  @Test
  void twoFingersOfEachSlapInTheNextBoxAreShifted() {
    assertEquals(
        List.of(
            "RP-SEQ-026: 4 rolled prints are in the position after their own;"
                + " each rolled print in its own position; matching fingers 4 -> "
                + SEQ),
        told(twoOfEach(40)));
    // The ring finger of the right hand matches the roll of its own name.
    assertEquals(List.of(), told(twoOfEach(4).roll(4, Print.of(4)).roll(5, Print.of(44))));
  }

  @Test
  void itsRulesAreThoseOfCardsAndOfTheirPrints() {
    assertEquals(
        Set.of(
            "RP-SEQ-020",
            "RP-SEQ-021",
            "RP-SEQ-022",
            "RP-SEQ-023",
            "RP-SEQ-024",
            "RP-SEQ-025",
            "RP-SEQ-026"),
        new CardCauses().ids());
  }

  @Test
  void theEvidenceIsTheSimilarityOfAllThatMatches() {
    double sum = 0;
    for (int finger : new int[] {2, 3, 4, 5, 7, 8, 9, 10}) {
      var minutiae = Print.of(finger).analysis().measures().orElseThrow().minutiae();
      sum += minutiae.similarities(List.of(minutiae))[0];
    }
    String told = reversed(MadeHands.rolls(), print -> print).card().told(new CardCauses()).get(0);
    double said = Double.parseDouble(told.replaceFirst(".*total similarity ([0-9.]+).*", "$1"));
    assertEquals(sum, said, 0.01);
  }
}
