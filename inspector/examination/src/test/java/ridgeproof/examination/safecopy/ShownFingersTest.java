package ridgeproof.examination.safecopy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static ridgeproof.spec.layout.FingerPosition.LEFT_INDEX;
import static ridgeproof.spec.layout.FingerPosition.RIGHT_INDEX;
import static ridgeproof.spec.layout.FingerPosition.RIGHT_LITTLE;
import static ridgeproof.spec.layout.FingerPosition.RIGHT_MIDDLE;
import static ridgeproof.spec.layout.FingerPosition.RIGHT_RING;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.SampleCard;
import ridgeproof.finding.Finding;
import ridgeproof.finding.Location;
import ridgeproof.ridges.matching.FingerMatchResult;
import ridgeproof.ridges.matching.FingerMatchResult.Reason;
import ridgeproof.ridges.matching.FingerMatchResult.Verdict;
import ridgeproof.ridges.matching.SequenceError;
import ridgeproof.ridges.matching.SequenceError.Kind;
import ridgeproof.spec.layout.FingerPosition;

class ShownFingersTest {

  private static final FindingsReport CARD = SampleCard.ofType("FAUF", 1, 13, 14).examine();
  private static final int RIGHT_SLAP = 4;
  private static final int LEFT_SLAP = 5;

  private static final Map<Integer, Integer> BOTH_HANDS =
      Map.of(2, 10, 3, 9, 4, 8, 5, 7, 7, 5, 8, 4, 9, 3, 10, 2);

  private static FingerMatchResult confirmed(FingerPosition position) {
    return new FingerMatchResult(
        position, Verdict.CONFIRMED, Reason.MATCHES_OWN_ROLL, 80, Optional.empty(), 0);
  }

  private static FingerMatchResult elsewhere(FingerPosition position, FingerPosition other) {
    return new FingerMatchResult(
        position, Verdict.CONTRADICTED, Reason.MATCHES_ANOTHER_ROLL, 5, Optional.of(other), 80);
  }

  private static FingerMatchResult open(FingerPosition position, FingerPosition other) {
    return new FingerMatchResult(
        position, Verdict.INCONCLUSIVE, Reason.MATCHES_NO_ROLL, 5, Optional.of(other), 30);
  }

  private static SequenceError error(Kind kind, FingerPosition... positions) {
    return new SequenceError(kind, List.of(positions), true, 80);
  }

  private static ShownFingers shown(
      List<FingerMatchResult> answers, List<SequenceError> errors, Finding... findings) {
    return ShownFingers.of(MadeReport.of(CARD, answers, errors, findings));
  }

  private static ShownFingers fingers(Map<Integer, Integer> plains, Map<Integer, Integer> rolls) {
    return new ShownFingers(plains, rolls, Set.of());
  }

  @Test
  void whereNothingWasComparedEachPrintShowsItsFinger() {
    assertEquals(fingers(Map.of(), Map.of()), ShownFingers.of(MadeReport.of(CARD)));
  }

  @Test
  void aPlainPrintThatMatchesAnotherRollShowsThatFinger() {
    assertEquals(
        fingers(Map.of(2, 3), Map.of()),
        shown(List.of(elsewhere(RIGHT_INDEX, RIGHT_MIDDLE), confirmed(RIGHT_MIDDLE)), List.of()));
  }

  @Test
  void whatIsNotCertainShowsItsFinger() {
    assertEquals(
        fingers(Map.of(), Map.of()), shown(List.of(open(RIGHT_INDEX, RIGHT_MIDDLE)), List.of()));
  }

  @ParameterizedTest
  @EnumSource(
      value = Kind.class,
      names = {"EXCHANGED", "THUMBS_EXCHANGED"})
  void ofTwoExchangedFingersTheRollsAreExchanged(Kind kind) {
    assertEquals(
        fingers(Map.of(), Map.of(2, 3, 3, 2)),
        shown(
            List.of(elsewhere(RIGHT_INDEX, RIGHT_MIDDLE), elsewhere(RIGHT_MIDDLE, RIGHT_INDEX)),
            List.of(error(kind, RIGHT_INDEX, RIGHT_MIDDLE))));
  }

  @Test
  void ofExchangedHandsThePlainPrintsAreExchanged() {
    assertEquals(
        fingers(Map.of(2, 7, 7, 2), Map.of()),
        shown(
            List.of(elsewhere(RIGHT_INDEX, LEFT_INDEX), elsewhere(LEFT_INDEX, RIGHT_INDEX)),
            List.of(error(Kind.HANDS_EXCHANGED, RIGHT_INDEX, LEFT_INDEX))));
  }

  @Test
  void aFingerFoundElsewhereShowsThere() {
    assertEquals(
        fingers(Map.of(2, 3), Map.of()),
        shown(
            List.of(elsewhere(RIGHT_INDEX, RIGHT_MIDDLE)),
            List.of(error(Kind.FOUND_ELSEWHERE, RIGHT_INDEX, RIGHT_MIDDLE))));
  }

  @Test
  void ofAFingerRolledTwiceTheRollInTheWrongPlaceShowsTheOther() {
    SequenceError twice = error(Kind.ROLLED_TWICE, RIGHT_INDEX, RIGHT_MIDDLE);
    assertEquals(
        fingers(Map.of(), Map.of(3, 2)),
        shown(List.of(confirmed(RIGHT_INDEX), open(RIGHT_MIDDLE, RIGHT_INDEX)), List.of(twice)));
    assertEquals(
        fingers(Map.of(), Map.of(2, 3)),
        shown(List.of(open(RIGHT_INDEX, RIGHT_MIDDLE), confirmed(RIGHT_MIDDLE)), List.of(twice)));
    assertEquals(fingers(Map.of(), Map.of(3, 2)), shown(List.of(), List.of(twice)));
  }

  @Test
  void ofAFingerPlacedTwiceThePlainPrintDoes() {
    SequenceError twice = error(Kind.PLAIN_TWICE, RIGHT_INDEX, RIGHT_MIDDLE);
    assertEquals(
        fingers(Map.of(2, 3), Map.of()), shown(List.of(confirmed(RIGHT_MIDDLE)), List.of(twice)));
  }

  @ParameterizedTest
  @EnumSource(
      value = Kind.class,
      names = {"ROTATED", "SHIFTED"})
  void aRingOfRollsClosesOverAFaintPrint(Kind kind) {
    SequenceError ring = error(kind, RIGHT_INDEX, RIGHT_MIDDLE, RIGHT_RING);
    Map<Integer, Integer> rolls = Map.of(3, 2, 4, 3, 2, 4);
    FingerMatchResult first = elsewhere(RIGHT_INDEX, RIGHT_MIDDLE);
    FingerMatchResult second = elsewhere(RIGHT_MIDDLE, RIGHT_RING);
    assertEquals(
        fingers(Map.of(), rolls),
        shown(List.of(first, second, elsewhere(RIGHT_RING, RIGHT_INDEX)), List.of(ring)));
    assertEquals(fingers(Map.of(), rolls), shown(List.of(first, second), List.of(ring)));
  }

  @Test
  void ofARingWithTwoFaintPrintsOnlyWhatIsKnownIsShown() {
    assertEquals(
        fingers(Map.of(), Map.of(3, 2)),
        shown(
            List.of(elsewhere(RIGHT_INDEX, RIGHT_MIDDLE), elsewhere(RIGHT_LITTLE, RIGHT_MIDDLE)),
            List.of(error(Kind.ROTATED, RIGHT_INDEX, RIGHT_MIDDLE, RIGHT_RING, RIGHT_LITTLE))));
  }

  @ParameterizedTest
  @ValueSource(strings = {"RP-SEQ-020", "RP-SEQ-021", "RP-SEQ-022", "RP-SEQ-025"})
  void ofImagesTurnedOrMirroredAsAWholeNoFingerIsInAnothersPlace(String rule) {
    assertEquals(
        fingers(Map.of(), Map.of()),
        shown(
            List.of(elsewhere(RIGHT_INDEX, RIGHT_MIDDLE)),
            List.of(),
            MadeReport.finding(rule, Location.file())));
  }

  private static Location finger(int position) {
    return Location.inRecord(3, 14).withPosition(OptionalInt.of(position));
  }

  @Test
  void aRollThatMatchesNoPlainPrintIsAStrangers() {
    ShownFingers shown =
        shown(
            List.of(),
            List.of(),
            MadeReport.finding("RP-SEQ-008", finger(2)),
            MadeReport.caused("RP-SEQ-008", finger(3), "RP-SEQ-028"),
            MadeReport.caused("RP-SEQ-008", finger(4), "RP-SEQ-020"),
            MadeReport.finding("RP-SEQ-008", Location.file()),
            MadeReport.finding("RP-SEQ-009", finger(5)));
    assertEquals(new ShownFingers(Map.of(), Map.of(), Set.of(2, 3)), shown);
  }

  @Test
  void bothSlapsOfTheOtherHandShowItInTheOrderOfASlap() {
    assertEquals(
        fingers(BOTH_HANDS, Map.of()),
        shown(List.of(), List.of(), MadeReport.finding("RP-SEQ-027", Location.file())));
  }

  @Test
  void oneSlapOfTheOtherHandShowsThatAlone() {
    assertEquals(
        fingers(Map.of(2, 10, 3, 9, 4, 8, 5, 7), Map.of()),
        shown(
            List.of(),
            List.of(),
            MadeReport.finding("RP-SEQ-010", Location.inRecord(RIGHT_SLAP, 14))));
    assertEquals(
        fingers(Map.of(7, 5, 8, 4, 9, 3, 10, 2), Map.of()),
        shown(
            List.of(),
            List.of(),
            MadeReport.finding("RP-SEQ-010", Location.inRecord(LEFT_SLAP, 14))));
    assertEquals(
        fingers(Map.of(), Map.of()),
        shown(List.of(), List.of(), MadeReport.finding("RP-SEQ-010", Location.inRecord(3, 14))));
  }

  @Test
  void whatAnotherCauseExplainsIsNoOtherHand() {
    assertEquals(
        fingers(Map.of(), Map.of()),
        shown(
            List.of(),
            List.of(),
            MadeReport.caused("RP-SEQ-010", Location.inRecord(RIGHT_SLAP, 14), "RP-SEQ-020")));
  }
}
