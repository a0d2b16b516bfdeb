package ridgeproof.examination.comparison;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.RidgeImage;
import ridgeproof.examination.SampleCard;
import ridgeproof.examination.SampleRecords;
import ridgeproof.examination.comparison.PrintComparison.Answer;
import ridgeproof.examination.comparison.PrintComparison.Reason;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.ImageExtraction;
import ridgeproof.examination.rules.ridges.MatchLimits;
import ridgeproof.imagery.DecodingLimits;
import ridgeproof.ridges.matching.SequenceLimits;
import ridgeproof.spec.layout.FingerPosition;

/** Whether two images show the same finger, and what says so. */
class FingerComparatorTest {

  private static final int INDEX = 4;
  private static final int MIDDLE = 5;
  private static final int RING = 6;
  private static final SampleCard CARD = SampleCard.rolledTagged();
  private static final MadePrints FIRST = MadePrints.on(CARD, 1);
  private static final MadePrints SECOND = MadePrints.on(CARD, 2);
  private static final SequenceLimits USUAL = MatchLimits.usual(SampleCard.TABLES);

  private static FingerComparison compared(
      MadePrints first, MadePrints second, int record, SequenceLimits limits) {
    return compared(first.report(), second.report(), record, limits);
  }

  private static FingerComparison compared(
      FindingsReport first, FindingsReport second, int record, SequenceLimits limits) {
    return new FingerComparator(prints(first), prints(second), limits)
        .answer(image(first, record), image(second, record));
  }

  private static TransactionPrints prints(FindingsReport report) {
    return new TransactionPrints(
        report, new ImageExtraction(SampleCard.TABLES, DecodingLimits.standard()));
  }

  private static ExaminedImage image(FindingsReport report, int record) {
    return report.imagesByRecord().get(record);
  }

  /** The code of each finger, the reason, and the code of the other finger. */
  private static List<String> answers(MadePrints first, MadePrints second, int record) {
    return lines(compared(first, second, record, USUAL));
  }

  private static List<String> lines(FingerComparison comparison) {
    return comparison.prints().stream()
        .map(
            print ->
                print.finger().code()
                    + " "
                    + print.reason()
                    + print.other().map(other -> " " + other.code()).orElse(""))
        .toList();
  }

  @Test
  void printsThatMatchAreOfOneFinger() {
    PrintComparison print =
        compared(FIRST.with(INDEX, 2, "A"), SECOND.with(INDEX, 2, "A"), INDEX, USUAL)
            .prints()
            .get(0);
    assertEquals(Answer.SAME_FINGER, print.answer());
    assertEquals(Reason.ALIKE, print.reason());
    assertEquals(FingerPosition.RIGHT_INDEX, print.finger());
    assertEquals(Optional.empty(), print.other());
    // One print lies on itself: neither turned nor shifted.
    assertEquals(0, print.alignment().orElseThrow().degrees(), 1e-9);
    assertEquals(0, print.alignment().orElseThrow().x(), 1e-6);
    assertEquals(0, print.alignment().orElseThrow().y(), 1e-6);
  }

  @Test
  void theOrderOfTheFilesMakesNoDifference() {
    SequenceLimits low = USUAL.withThreshold(20);
    MadePrints first = FIRST.with(INDEX, 2, "A");
    MadePrints second = SECOND.with(INDEX, 2, "a");
    PrintComparison there = compared(first, second, INDEX, low).prints().get(0);
    PrintComparison back = compared(second, first, INDEX, low).prints().get(0);
    assertEquals(Reason.ALIKE, there.reason());
    assertEquals(Reason.ALIKE, back.reason());
    assertEquals(there.similarity(), back.similarity());
  }

  @Test
  void aSimilarityThatEqualsTheThresholdIsAMatch() {
    MadePrints first = FIRST.with(INDEX, 2, "A");
    MadePrints second = SECOND.with(INDEX, 2, "a");
    double similarity =
        compared(first, second, INDEX, USUAL.withThreshold(1)).prints().get(0).similarity();
    assertTrue(similarity > 1, () -> "similarity " + similarity);
    assertEquals(
        List.of("2 ALIKE"), lines(compared(first, second, INDEX, USUAL.withThreshold(similarity))));
    assertEquals(
        List.of("2 NOT_ALIKE"),
        lines(compared(first, second, INDEX, USUAL.withThreshold(Math.nextUp(similarity)))));
  }

  @Test
  void lackOfAMatchSaysNothing() {
    PrintComparison print =
        compared(FIRST.with(INDEX, 2, "A"), SECOND.with(INDEX, 2, "B"), INDEX, USUAL)
            .prints()
            .get(0);
    assertEquals(Answer.CANNOT_BE_TOLD, print.answer());
    assertEquals(Reason.NOT_ALIKE, print.reason());
    assertTrue(print.similarity() < 10, () -> "similarity " + print.similarity());
    assertEquals(Optional.empty(), print.alignment());
  }

  @Test
  void aPrintOfTheSecondThatMatchesAnotherFingerOfTheFirstIsADifferentFinger() {
    MadePrints first = FIRST.with(INDEX, 2, "A").with(MIDDLE, 3, "B");
    PrintComparison print =
        compared(first, SECOND.with(INDEX, 2, "B"), INDEX, USUAL).prints().get(0);
    assertEquals(Answer.DIFFERENT_FINGER, print.answer());
    assertEquals(Reason.SECOND_MATCHES_ANOTHER, print.reason());
    assertEquals(Optional.of(FingerPosition.RIGHT_MIDDLE), print.other());
    assertTrue(print.otherSimilarity() > 500, () -> "similarity " + print.otherSimilarity());
  }

  @Test
  void aPrintOfTheFirstThatMatchesAnotherFingerOfTheSecondIsADifferentFinger() {
    MadePrints second = SECOND.with(INDEX, 2, "B").with(MIDDLE, 3, "A");
    assertEquals(
        List.of("2 FIRST_MATCHES_ANOTHER 3"), answers(FIRST.with(INDEX, 2, "A"), second, INDEX));
  }

  @Test
  void aPrintThatMatchesSeveralFingersSaysNothing() {
    MadePrints one = FIRST.with(INDEX, 2, "A").with(MIDDLE, 3, "B").with(RING, 4, "B");
    assertEquals(List.of("2 SEVERAL_ALIKE"), answers(one, SECOND.with(INDEX, 2, "B"), INDEX));
    assertEquals(List.of("2 SEVERAL_ALIKE"), answers(FIRST.with(INDEX, 2, "B"), one, INDEX));
  }

  @Test
  void aPrintWithTooFewMinutiaeSaysNothing() {
    MadePrints poor = FIRST.with(INDEX, 2, " ");
    MadePrints clear = SECOND.with(INDEX, 2, "B");
    assertEquals(List.of("2 TOO_FEW_MINUTIAE"), answers(poor, clear, INDEX));
    assertEquals(List.of("2 TOO_FEW_MINUTIAE"), answers(clear, poor, INDEX));
  }

  @Test
  void aFingerWithoutAPrintIsToldByTheFileThatLacksIt() {
    MadePrints print = SECOND.with(INDEX, 2, "A");
    assertEquals(List.of("2 NO_PRINT_IN_FIRST"), answers(FIRST, print, INDEX));
    assertEquals(List.of("2 NO_PRINT_IN_SECOND"), answers(print, FIRST, INDEX));
  }

  private static MadePrints without(MadePrints prints, int finger) {
    List<List<String>> missing = List.of(List.of(Integer.toString(finger), "XX"));
    return prints.change(card -> card.with(2, draft -> draft.with(84, missing)));
  }

  @Test
  void aFingerThatOneFileAnnotatesAsMissingIsToldByThatFile() {
    MadePrints print = SECOND.with(INDEX, 2, "A");
    MadePrints missing = without(FIRST, 2);
    assertEquals(List.of("2 DECLARED_MISSING_IN_FIRST"), answers(missing, print, INDEX));
    assertEquals(List.of("2 DECLARED_MISSING_IN_SECOND"), answers(print, missing, INDEX));
    assertEquals(List.of(), answers(missing, without(SECOND, 2), INDEX));
  }

  @Test
  void eachFingerOfASlapHasItsOwnAnswer() {
    int slap = SampleRecords.RIGHT_SLAP;
    MadePrints first = FIRST.with(slap, 2, "A").with(slap, 3, "B").with(slap, 4, "C");
    MadePrints second = SECOND.with(slap, 2, "B").with(slap, 3, "E").with(slap, 4, "C");
    assertEquals(
        List.of(
            "2 SECOND_MATCHES_ANOTHER 3",
            "3 FIRST_MATCHES_ANOTHER 2",
            "4 ALIKE",
            "5 NO_PRINT_IN_FIRST"),
        answers(first, second, slap));
  }

  @Test
  void onlyFingersThatBothImagesNameAreCompared() {
    MadePrints first = FIRST.with(INDEX, 2, "A");
    MadePrints second = SECOND.with(INDEX, 3, "A").change(moved(INDEX, "3"));
    assertEquals(List.of(), answers(first, second, INDEX));
    assertEquals(List.of(), answers(first, SECOND.change(moved(INDEX, "21")), INDEX));
  }

  private static UnaryOperator<SampleCard> moved(int record, String position) {
    return card -> card.with(record, draft -> draft.with(13, position));
  }

  @ParameterizedTest(name = "{0} by {1} pixels per inch: {2}")
  @CsvSource({
    "500, 500, ALIKE",
    "504, 500, ALIKE",
    "496, 500, ALIKE",
    "506, 500, UNUSABLE_RESOLUTION",
    "494, 500, UNUSABLE_RESOLUTION",
  })
  void ridgesAreComparedWhereThePixelsAreSquareWithinOnePercent(
      String across, String down, Reason reason) {
    MadePrints print = FIRST.with(INDEX, 2, "A");
    MadePrints other =
        SECOND
            .with(INDEX, 2, "A")
            .change(card -> card.with(INDEX, draft -> draft.with(9, across).with(10, down)));
    assertEquals(List.of("2 " + reason), answers(print, other, INDEX));
    assertEquals(List.of("2 " + reason), answers(other, print, INDEX));
  }

  /** Which of two prints of one name counts, where another print is held against all. */
  @Test
  void printsCapturedLikeTheImageComeBeforeTheOthers() {
    int plainThumb = 13;
    int slap = SampleRecords.RIGHT_SLAP;
    MadePrints first =
        FIRST.with(3, 1, "A").with(plainThumb, 1, "B").with(INDEX, 2, "C").with(slap, 2, "D");
    assertEquals(
        List.of("2 SECOND_MATCHES_ANOTHER 1"), answers(first, SECOND.with(INDEX, 2, "A"), INDEX));
    assertEquals(List.of("2 NOT_ALIKE"), answers(first, SECOND.with(INDEX, 2, "B"), INDEX));
    assertEquals(
        List.of(
            "2 SECOND_MATCHES_ANOTHER 1",
            "3 NO_PRINT_IN_FIRST",
            "4 NO_PRINT_IN_FIRST",
            "5 NO_PRINT_IN_FIRST"),
        answers(first, SECOND.with(slap, 2, "B"), slap));
    assertEquals("2 NOT_ALIKE", answers(first, SECOND.with(slap, 2, "A"), slap).get(0));
  }

  @Test
  void theLeftLittleFingerIsRolledToo() {
    MadePrints first = FIRST.with(3, 1, "A").with(13, 1, "B").with(12, 10, "C");
    assertEquals(
        List.of("10 SECOND_MATCHES_ANOTHER 1"), answers(first, SECOND.with(12, 10, "A"), 12));
    assertEquals(List.of("10 NOT_ALIKE"), answers(first, SECOND.with(12, 10, "B"), 12));
  }

  @Test
  void aFingerCapturedOnlyOtherwiseCountsToo() {
    MadePrints first = FIRST.with(INDEX, 2, "C").with(13, 1, "B");
    assertEquals(
        List.of("2 SECOND_MATCHES_ANOTHER 1"), answers(first, SECOND.with(INDEX, 2, "B"), INDEX));
  }

  /** Such as a trace. */
  @Test
  void anImageWhoseRidgesWereNotLookedAtIsMeasured() {
    FindingsReport unseen =
        Compared.report(RidgeImage.withThumb(RidgeImage.usual()), Depth.STRUCTURE);
    assertEquals(List.of("1 TOO_FEW_MINUTIAE"), lines(compared(unseen, unseen, 3, USUAL)));
    assertEquals(List.of("2 NO_PRINT_IN_FIRST"), lines(compared(unseen, unseen, INDEX, USUAL)));
  }
}
