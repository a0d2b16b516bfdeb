package ridgeproof.examination.cause.card;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static ridgeproof.examination.cause.MeasuredCard.at;

import java.util.ArrayList;
import java.util.EnumMap;
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
import ridgeproof.examination.facts.SequenceComparison;
import ridgeproof.examination.facts.SequenceComparison.SeenFinger;
import ridgeproof.finding.Finding;
import ridgeproof.ridges.matching.FingerMatchResult;
import ridgeproof.ridges.matching.FingerMatchResult.Reason;
import ridgeproof.ridges.matching.FingerMatchResult.Verdict;
import ridgeproof.ridges.matching.SequenceError;
import ridgeproof.ridges.matching.SequenceResult;
import ridgeproof.spec.layout.FingerPosition;

/** A hand, or a card, of which no clear plain print matches a roll is of someone else. */
class StrangersHandTest {

  private static final Reason NONE = Reason.MATCHES_NO_ROLL;
  private static final Reason FEW = Reason.TOO_FEW_MINUTIAE;

  private static FingerMatchResult answer(int finger, Reason reason) {
    return new FingerMatchResult(
        FingerPosition.values()[finger - 1], Verdict.INCONCLUSIVE, reason, 5, Optional.empty(), 0);
  }

  /** The left slap, whose little, ring, middle and index finger have these answers. */
  private static MeasuredCard left(boolean inOrder, Reason[] slap, FingerMatchResult... others) {
    MadeHands hands =
        MadeHands.none()
            .slap(MadeHands.LEFT_SLAP, MadeHands.LEFT, MadeHands.prints(30, 30, 30, 30));
    Map<FingerPosition, SeenFinger> plains = new EnumMap<>(FingerPosition.class);
    List<FingerMatchResult> answers = new ArrayList<>(List.of(others));
    for (int i = 0; i < slap.length; i++) {
      int finger = MadeHands.LEFT.get(i);
      answers.add(answer(finger, slap[i]));
      plains.put(
          FingerPosition.values()[finger - 1],
          new SeenFinger(
              hands.card().image(MadeHands.LEFT_SLAP), MadeHands.Print.of(30).analysis()));
    }
    List<SequenceError> errors =
        inOrder
            ? List.of()
            : List.of(
                new SequenceError(
                    SequenceError.Kind.EXCHANGED,
                    List.of(FingerPosition.RIGHT_INDEX, FingerPosition.RIGHT_MIDDLE),
                    true,
                    90));
    return hands
        .card()
        .compared(
            new SequenceComparison(new SequenceResult(answers, errors, 40), Map.of(), plains));
  }

  private static Finding[] unmatched(int fingers) {
    Finding[] found = new Finding[fingers];
    for (int i = 0; i < fingers; i++) {
      found[i] = at("RP-SEQ-008", MadeHands.LEFT_SLAP, MadeHands.LEFT.get(i));
    }
    return found;
  }

  private static Reason[] reasons(Reason... reasons) {
    return reasons;
  }

  private static List<String> told(MeasuredCard card, Finding... found) {
    return card.told(new StrangersPrintsCause(), found);
  }

  @Test
  void threeFingersOfAHandExplainWhatIsSaidOfThemAlone() {
    Finding[] found =
        MeasuredCard.all(
            unmatched(3),
            new Finding[] {
              at("RP-SEQ-007", 10, 8),
              at("RP-SEQ-007", 9, 7),
              at("RP-SEQ-001", 10, 8),
              at("RP-SEQ-008", 15, 2)
            });
    assertEquals(
        List.of(
            "RP-SEQ-028 record 16 finger 14: 3 clear plain prints of this hand match no rolled"
                + " print; rolled and plain prints of one person"
                + " -> RP-SEQ-008 record 16 finger 10, RP-SEQ-008 record 16 finger 9,"
                + " RP-SEQ-008 record 16 finger 8, RP-SEQ-007 record 10 finger 8"),
        told(
            left(true, reasons(NONE, NONE, NONE, FEW), answer(2, Reason.MATCHES_OWN_ROLL)), found));
    assertEquals(Set.of("RP-SEQ-028"), new StrangersPrintsCause().ids());
  }

  @Test
  void twoFingersOfAHandMayShowOtherParts() {
    assertEquals(List.of(), told(left(true, reasons(NONE, NONE, FEW, FEW)), unmatched(2)));
  }

  @Test
  void oneMatchOfTheHandOrOneThatIsMoreAlikeThanAllClearsIt() {
    for (Reason clears :
        List.of(
            Reason.MATCHES_OWN_ROLL,
            Reason.MATCHES_ANOTHER_ROLL,
            Reason.MATCHES_SEVERAL_ROLLS,
            Reason.MOST_LIKE_OWN_ROLL)) {
      assertEquals(List.of(), told(left(true, reasons(NONE, NONE, NONE, clears)), unmatched(3)));
    }
  }

  @Test
  void fourOfTheCardAreOneFindingOfIt() {
    String card =
        "RP-SEQ-028: 4 clear plain prints match no rolled print;"
            + " rolled and plain prints of one person"
            + " -> RP-SEQ-008 record 16 finger 10, RP-SEQ-008 record 16 finger 9,"
            + " RP-SEQ-008 record 16 finger 8, RP-SEQ-008 record 16 finger 7";
    Reason[] four = reasons(NONE, NONE, NONE, NONE);
    assertEquals(List.of(card), told(left(true, four), unmatched(4)));
    assertEquals(
        List.of(card), told(left(true, four, answer(2, Reason.MOST_LIKE_OWN_ROLL)), unmatched(4)));
    String hand =
        card.replace("RP-SEQ-028", "RP-SEQ-028 record 16 finger 14")
            .replace("prints match", "prints of this hand match");
    assertEquals(
        List.of(hand),
        told(
            left(
                true,
                four,
                answer(2, Reason.MOST_LIKE_OWN_ROLL),
                answer(3, Reason.MOST_LIKE_OWN_ROLL)),
            unmatched(4)));
    // Where fingers are in the wrong boxes, that may be why others match nothing.
    assertEquals(List.of(hand), told(left(false, four), unmatched(4)));
  }

  @Test
  void whatACauseExplainsAlreadyDoesNotCount() {
    List<Finding> found = List.of(unmatched(3));
    CauseLog log = new CauseLog(SampleCard.TABLES);
    log.add(Established.finding("RP-SEQ-021"), Consequences.exactly(found.subList(0, 1)));
    new StrangersPrintsCause()
        .establish(left(true, reasons(NONE, NONE, NONE, FEW)).examinee(), found, log);
    assertEquals(1, log.causes().size());
  }

  @Test
  void whereNothingWasComparedNothingIsTold() {
    assertEquals(List.of(), MeasuredCard.ofRolls().told(new StrangersPrintsCause(), unmatched(4)));
  }
}
