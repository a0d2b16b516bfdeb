package ridgeproof.examination.cause.card;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static ridgeproof.examination.cause.MeasuredCard.at;
import static ridgeproof.examination.cause.card.MadeHands.LEFT;
import static ridgeproof.examination.cause.card.MadeHands.LEFT_SLAP;
import static ridgeproof.examination.cause.card.MadeHands.RIGHT;
import static ridgeproof.examination.cause.card.MadeHands.RIGHT_SLAP;
import static ridgeproof.examination.cause.card.MadeHands.prints;

import java.util.List;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.cause.Established;
import ridgeproof.examination.cause.card.MadeHands.Print;
import ridgeproof.finding.Finding;
import ridgeproof.imagery.Turn;

/** Single prints of a card that are mirrored or turned, and slaps of which hardly one matches. */
class SinglePrintPosesTest {

  private static final Finding[] FOUND = {
    at("RP-SEQ-001", 4, 2),
    at("RP-SEQ-001", 3, 1),
    at("RP-RDG-002", 4, 2),
    at("RP-RDG-002", 3, 1),
    at("RP-RDG-002", 13, 1),
    at("RP-IMG-009", 4, 2),
    at("RP-IMG-019", 4, 2),
    at("RP-IMG-016", 4, 2)
  };

  private static final String EITHER =
      "rolled or plain print mirrored: they match only when one is mirrored;"
          + " an image that is not mirrored";

  private static List<String> told(MadeHands hands) {
    return hands.card().told(new CardCauses(), FOUND).stream()
        .map(line -> line.replaceFirst("; total similarity [0-9.]+", ""))
        .toList();
  }

  private static MadeHands withSlap() {
    return MadeHands.rolls().slap(RIGHT_SLAP, RIGHT, prints(2, 3, 4, 5));
  }

  @Test
  void oneRollMirroredExplainsWhatIsSaidOfItsOrder() {
    assertEquals(
        List.of(
            "RP-SEQ-023 record 4 finger 2: rolled print mirrored: it matches its plain print only"
                + " when mirrored; an image that is not mirrored"
                + " -> RP-SEQ-001 record 4 finger 2"),
        told(withSlap().roll(2, Print.of(2).mirror())));
  }

  @Test
  void whereHalfOfASlapMatchesTheOtherRollsAreTheMirroredOnes() {
    assertEquals(
        List.of(
            "RP-SEQ-023 record 4 finger 2: rolled print mirrored: it matches its plain print only"
                + " when mirrored; an image that is not mirrored"
                + " -> RP-SEQ-001 record 4 finger 2",
            "RP-SEQ-023 record 5 finger 3: rolled print mirrored: it matches its plain print only"
                + " when mirrored; an image that is not mirrored"),
        told(withSlap().roll(2, Print.of(2).mirror()).roll(3, Print.of(3).mirror())));
  }

  @Test
  void ofAThumbEitherPrintMayBeTheMirroredOne() {
    assertEquals(
        List.of("RP-SEQ-023 record 3 finger 1: " + EITHER + " -> RP-SEQ-001 record 3 finger 1"),
        told(withSlap().plain(13, 1, Print.of(1).mirror())));
  }

  @Test
  void oneRollUpsideDownOrOnItsSideExplainsWhatIsSeenOfItsImage() {
    String explained =
        "; the fingertip at the top -> RP-SEQ-001 record 4 finger 2,"
            + " RP-RDG-002 record 4 finger 2, RP-IMG-009 record 4 finger 2,"
            + " RP-IMG-019 record 4 finger 2";
    assertEquals(
        List.of("RP-SEQ-024 record 4 finger 2: rolled print upside down" + explained),
        told(withSlap().roll(2, Print.of(2).turned(Turn.HALF))));
    assertEquals(
        List.of("RP-SEQ-024 record 4 finger 2: rolled print turned by 90 degrees" + explained),
        told(withSlap().roll(2, Print.of(2).turned(Turn.QUARTER_RIGHT))));
  }

  @Test
  void ofAThumbTheOneWhoseTipIsFurtherFromTheTopIsTurned() {
    for (Turn turn : List.of(Turn.HALF, Turn.QUARTER_RIGHT, Turn.QUARTER_LEFT)) {
      String how =
          (turn == Turn.HALF ? "upside down" : "turned by 90 degrees")
              + "; the fingertip at the top -> RP-SEQ-001 record 3 finger 1, RP-RDG-002 record ";
      assertEquals(
          List.of("RP-SEQ-024 record 13 finger 1: plain print " + how + "13 finger 1"),
          told(withSlap().plain(13, 1, Print.of(1).turned(turn))));
      assertEquals(
          List.of("RP-SEQ-024 record 3 finger 1: rolled print " + how + "3 finger 1"),
          told(withSlap().roll(1, Print.of(1).turned(turn)).plain(13, 1, Print.of(1))));
    }
  }

  @Test
  void thumbsThatMatchInNoWayAreLeftToOtherRules() {
    assertEquals(List.of(), told(withSlap().plain(13, 1, Print.of(20))));
    assertEquals(List.of(), told(withSlap().plain(13, 1, Print.of(6))));
  }

  private static MadeHands plains(Turn turn, boolean mirrored) {
    MadeHands hands = MadeHands.rolls();
    int[] fingers = {1, 6, 2, 3};
    for (int i = 0; i < fingers.length; i++) {
      Print print = Print.of(fingers[i]).turned(turn);
      hands = hands.plain(13 + i, fingers[i], mirrored ? print.mirror() : print);
    }
    return hands;
  }

  @Test
  void theSameFaultOfMostPrintsIsOneOfTheCard() {
    assertEquals(
        List.of(
            "RP-SEQ-022: 4 fingers: "
                + EITHER
                + " -> RP-SEQ-001 record 4 finger 2, RP-SEQ-001 record 3 finger 1"),
        told(plains(Turn.NONE, true)));
    assertEquals(
        List.of(
            "RP-SEQ-021: 4 fingers: plain print upside down; the fingertip at the top"
                + " -> RP-SEQ-001 record 4 finger 2, RP-SEQ-001 record 3 finger 1,"
                + " RP-RDG-002 record 13 finger 1"),
        told(plains(Turn.HALF, false)));
    assertEquals(
        List.of(
            "RP-SEQ-025: 4 fingers: plain print turned by 90 degrees; the fingertip at the top"
                + " -> RP-SEQ-001 record 4 finger 2, RP-SEQ-001 record 3 finger 1,"
                + " RP-RDG-002 record 13 finger 1"),
        told(plains(Turn.QUARTER_LEFT, false)));
  }

  /** Three thumbs mirrored, and so many sound prints beside them. */
  private static List<String> threeBeside(Print... sound) {
    List<Integer> places = List.of(7, 8, 9, 10).subList(0, sound.length);
    List<String> rules =
        told(
                MadeHands.rolls()
                    .plain(13, 1, Print.of(1).mirror())
                    .plain(14, 6, Print.of(6).mirror())
                    .plain(15, 2, Print.of(2).mirror())
                    .slap(LEFT_SLAP, places, sound))
            .stream()
            .map(line -> line.substring(0, "RP-SEQ-000".length()))
            .toList();
    return rules;
  }

  @Test
  void threeOfFiveAreMostAndThreeOfSixAreNot() {
    assertEquals(List.of("RP-SEQ-022"), threeBeside(prints(7, 8)));
    assertEquals(List.of("RP-SEQ-023", "RP-SEQ-023", "RP-SEQ-023"), threeBeside(prints(7, 8, 9)));
  }

  @Test
  void aFaultOfMostPrintsExplainsNothingOfAFingerWithoutIt() {
    MadeHands hands =
        MadeHands.rolls()
            .plain(13, 1, Print.of(1).mirror())
            .plain(14, 6, Print.of(6).mirror())
            .plain(15, 2, Print.of(2).mirror())
            .slap(LEFT_SLAP, List.of(7, 8), prints(7, 8));
    List<String> told =
        hands
            .card()
            .told(
                new CardCauses(),
                at("RP-SEQ-001", 4, 2),
                at("RP-SEQ-001", 15, 13),
                at("RP-SEQ-002", 9, 7),
                at("RP-RDG-002", 4, 2),
                Established.finding("RP-SEQ-004"));
    assertEquals(
        List.of(
            "RP-SEQ-022: 3 fingers: "
                + EITHER
                + " -> RP-SEQ-001 record 4 finger 2, RP-SEQ-001 record 15 finger 13, RP-SEQ-004"),
        told);
  }

  @Test
  void twoPrintsAreEachByThemselves() {
    assertEquals(
        List.of(
            "RP-SEQ-023 record 3 finger 1: " + EITHER + " -> RP-SEQ-001 record 3 finger 1",
            "RP-SEQ-023 record 8 finger 6: " + EITHER),
        told(
            MadeHands.rolls()
                .plain(13, 1, Print.of(1).mirror())
                .plain(14, 6, Print.of(6).mirror())));
  }

  private static List<String> posed(Print only, int place) {
    Print[] prints = prints(30, 31, 32, 33);
    prints[place] = only;
    return told(withSlap().slap(LEFT_SLAP, LEFT, prints)).stream()
        .map(line -> line.replaceFirst(";.*", ""))
        .toList();
  }

  @Test
  void aSinglePrintTellsThePoseOfASlapWhereItsPlaceAgrees() {
    // In the place of the other end, as in a mirror, or upside down.
    assertEquals(
        List.of("RP-SEQ-022 record 16 finger 14: image mirrored"), posed(Print.of(10).mirror(), 3));
    assertEquals(
        List.of("RP-SEQ-021 record 16 finger 14: image upside down"),
        posed(Print.of(10).turned(Turn.HALF), 3));
    // In its own place, mirrored and upside down.
    assertEquals(
        List.of("RP-SEQ-022 record 16 finger 14: image mirrored"),
        posed(Print.of(10).turned(Turn.HALF).mirror(), 0));
    // On its side, in the place of another.
    assertEquals(
        List.of("RP-SEQ-025 record 16 finger 14: image turned by 90 degrees"),
        posed(Print.of(10).turned(Turn.QUARTER_LEFT), 3));
  }

  @Test
  void aSinglePrintInAPlaceThatDoesNotAgreeTellsNoPose() {
    assertEquals(List.of(), posed(Print.of(10), 3));
    assertEquals(List.of(), posed(Print.of(10).mirror(), 0));
    assertEquals(List.of(), posed(Print.of(10).turned(Turn.HALF).mirror(), 3));
    assertEquals(List.of(), posed(Print.of(10).turned(Turn.QUARTER_LEFT).mirror(), 3));
  }
}
