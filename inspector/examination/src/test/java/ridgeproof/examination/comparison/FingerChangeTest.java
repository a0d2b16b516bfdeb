package ridgeproof.examination.comparison;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ridgeproof.examination.RuleExamples;
import ridgeproof.examination.SampleCard;
import ridgeproof.examination.SampleRecords;
import ridgeproof.examination.comparison.FingerChange.Send;
import ridgeproof.examination.comparison.FingerChange.Trend;
import ridgeproof.examination.comparison.PrintComparison.Answer;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.finding.Finding;
import ridgeproof.ridges.quality.FingerAnalysis;
import ridgeproof.ridges.quality.QualityScore;
import ridgeproof.spec.layout.FingerPosition;
import ridgeproof.spec.rule.Severity;

/** Which of two captures of a finger is the better to send. */
class FingerChangeTest {

  private static final SampleCard CARD = SampleCard.rolledTagged();
  private static final ExaminedImage IMAGE = Compared.report(CARD, Depth.STRUCTURE).images().get(0);
  private static final Map<Severity, Finding> PROBLEMS =
      Map.of(
          Severity.BLOCKING, problem(CARD.with(2, draft -> draft.without(20))),
          Severity.LIKELY, problem(CARD.with(2, draft -> draft.with(20, "US"))),
          Severity.ADVICE, problem(CARD.with(2, draft -> draft.with(73, "MD0000000"))));

  private static Finding problem(SampleCard card) {
    return Compared.report(card, Depth.STRUCTURE).findings().get(0);
  }

  /** A score and a severity, such as {@code 60 LIKELY}; {@code ?} for no score. */
  private static Optional<FingerCapture> capture(String text) {
    if (text.equals("none")) {
      return Optional.empty();
    }
    String[] words = text.split(" ");
    Optional<FingerAnalysis> analysis =
        words[0].equals("?")
            ? Optional.empty()
            : Optional.of(
                new FingerAnalysis(
                    List.of(),
                    Optional.empty(),
                    new QualityScore(Integer.parseInt(words[0]), List.of())));
    List<Finding> problems =
        words.length < 2 ? List.of() : List.of(PROBLEMS.get(Severity.valueOf(words[1])));
    return Optional.of(new FingerCapture(IMAGE, analysis, problems));
  }

  @ParameterizedTest(name = "{0} before, {1} after")
  @CsvSource({
    "60, 60, SAME, EITHER",
    "60, 64, SAME, EITHER",
    "60, 65, BETTER, SECOND",
    "60, 56, SAME, EITHER",
    "60, 55, WORSE, FIRST",
    "?, ?, SAME, EITHER",
    "?, 5, BETTER, SECOND",
    "?, 4, SAME, EITHER",
    "60 ADVICE, 60, SAME, EITHER",
    "60 LIKELY, 20, BETTER, SECOND",
    "60 BLOCKING, 20 ADVICE, BETTER, SECOND",
    "20, 90 LIKELY, WORSE, FIRST",
    "60 LIKELY, 60 LIKELY, SAME, NEITHER",
    "60 LIKELY, 90 LIKELY, BETTER, NEITHER",
    "none, 60, ADDED, SECOND",
    "none, 60 LIKELY, ADDED, NEITHER",
    "60, none, REMOVED, FIRST",
    "60 BLOCKING, none, REMOVED, NEITHER",
  })
  void theGraverProblemDecidesThenTheScore(String first, String second, Trend trend, Send send) {
    FingerChange change =
        new FingerChange(FingerPosition.LEFT_INDEX, true, capture(first), capture(second), false);
    assertEquals(trend, change.trend());
    assertEquals(send, change.send());
  }

  private static List<String> fingers(TransactionComparison comparison) {
    return comparison.fingers().stream()
        .filter(change -> change.trend() != Trend.SAME || !change.same())
        .map(c -> (c.rolled() ? "rolled " : "plain ") + c.finger().code() + " " + c.trend())
        .toList();
  }

  @Test
  void everyFingerIsListedRolledAndThenPlain() {
    List<FingerChange> changes = Compared.cards(CARD, CARD).fingers();
    assertEquals(20, changes.size());
    assertEquals(
        IntStream.range(0, 20).mapToObj(i -> i < 10).toList(),
        changes.stream().map(FingerChange::rolled).toList());
    assertEquals(
        IntStream.range(0, 20).mapToObj(i -> i % 10 + 1).toList(),
        changes.stream().map(change -> change.finger().code()).toList());
    assertTrue(changes.stream().allMatch(FingerChange::same));
  }

  @Test
  void aFingerThatOnlyOneHasIsAddedOrRemoved() {
    assertEquals(List.of("rolled 2 REMOVED"), fingers(Compared.cards(CARD, CARD.without(4))));
    assertEquals(List.of("rolled 2 ADDED"), fingers(Compared.cards(CARD.without(4), CARD)));
    assertEquals(
        List.of("plain 7 ADDED", "plain 8 ADDED", "plain 9 ADDED", "plain 10 ADDED"),
        fingers(Compared.cards(CARD.without(16), CARD)));
  }

  @Test
  void aFingerThatIsDeclaredMissingHasNoCapture() {
    SampleCard missing = CARD.with(2, draft -> draft.with(84, List.of(List.of("4", "XX"))));
    assertEquals(
        List.of("rolled 4 REMOVED", "plain 4 REMOVED"), fingers(Compared.cards(CARD, missing)));
  }

  @Test
  void aFindingThatNamesAFingerIsAboutNoOtherOfTheImage() {
    SampleCard again =
        SampleRecords.tagged(
            SampleRecords.RIGHT_SLAP, record -> record.with(21, SampleRecords.boxes(2, 3, 3, 5)));
    List<String> doubtful =
        Compared.cards(CARD, again).fingers().stream()
            .filter(change -> change.second().orElseThrow().isDoubtful())
            .map(change -> change.rolled() + " " + change.finger().code())
            .toList();
    assertEquals(List.of("false 3"), doubtful);
  }

  @Test
  void aFindingOfTheImageIsAboutEachOfItsFingersTheWorstFirst() {
    SampleCard wrong =
        CARD.with(SampleRecords.RIGHT_SLAP, draft -> draft.with(9, "300").with(5, "20260304"));
    List<FingerChange> doubtful =
        Compared.cards(CARD, wrong).fingers().stream()
            .filter(change -> change.second().orElseThrow().isDoubtful())
            .toList();
    assertEquals(List.of(2, 3, 4, 5), doubtful.stream().map(c -> c.finger().code()).toList());
    List<Severity> severities =
        doubtful.get(0).second().orElseThrow().problems().stream().map(Finding::severity).toList();
    assertEquals(severities.stream().sorted().toList(), severities);
    assertFalse(severities.contains(Severity.NOTE));
    assertTrue(severities.size() > 1, severities.toString());
  }

  @Test
  void ofAFingerThatIsThereTwiceTheBetterCaptureCounts() {
    SampleCard twice = CARD.plus(SampleCard.taggedPrint(20, 2, 1));
    FingerChange index =
        Compared.cards(twice, CARD).fingers().stream()
            .filter(change -> change.finger() == FingerPosition.RIGHT_INDEX)
            .findFirst()
            .orElseThrow();
    assertEquals(4, index.first().orElseThrow().image().record().ordinal());
  }

  @Test
  void ofTwoCapturesAsGoodAsEachOtherTheFirstCounts() {
    MadePrints twice = MadePrints.on(TWICE, 1).with(4, 2, MadePrints.analysis("A", 60));
    FingerChange index =
        rolledIndex(
            twice.with(17, 2, MadePrints.analysis("B", 64)),
            twice.with(17, 2, MadePrints.analysis("B", 65)));
    assertEquals(4, index.first().orElseThrow().image().record().ordinal());
    assertEquals(Optional.of(60), index.first().orElseThrow().score());
    assertEquals(17, index.second().orElseThrow().image().record().ordinal());
    assertEquals(Optional.of(65), index.second().orElseThrow().score());
  }

  private static final SampleCard TWICE = CARD.plus(SampleCard.taggedPrint(20, 2, 1));

  private static FingerChange rolledIndex(MadePrints first, MadePrints second) {
    return Compared.reports(first.report(), second.report()).fingers().stream()
        .filter(change -> change.rolled() && change.finger() == FingerPosition.RIGHT_INDEX)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void otherPixelsOfAFingerAreAnotherCapture() {
    SampleCard second = CARD.with(3, draft -> RuleExamples.data(draft, MadePrints.pixels(1, 3)));
    assertEquals(
        List.of("rolled 1"),
        Compared.cards(CARD, second, Depth.IMAGES).fingers().stream()
            .filter(change -> !change.same())
            .map(change -> (change.rolled() ? "rolled " : "plain ") + change.finger().code())
            .toList());
  }

  /** The capture that only one file has is the better one there, and the common one the worse. */
  @Test
  void aCaptureThatIsNotTheOneToSendDoesNotMakeAFingerTheSame() {
    MadePrints two =
        MadePrints.on(TWICE, 1)
            .with(4, 2, MadePrints.analysis("A", 60))
            .with(17, 2, MadePrints.analysis("B", 20));
    MadePrints one =
        MadePrints.on(CARD, 2)
            .change(
                card -> card.with(4, draft -> RuleExamples.data(draft, MadePrints.pixels(1, 17))))
            .with(4, 2, MadePrints.analysis("B", 20));
    assertFalse(rolledIndex(two, one).same());
    assertFalse(rolledIndex(one, two).same());
    assertTrue(rolledIndex(one, one).same());
  }

  @ParameterizedTest
  @CsvSource({
    "'', CANNOT_BE_TOLD",
    "S, SAME_FINGER",
    "SS, SAME_FINGER",
    "SC, CANNOT_BE_TOLD",
    "C, CANNOT_BE_TOLD",
    "SD, DIFFERENT_FINGER",
    "CD, DIFFERENT_FINGER",
    "D, DIFFERENT_FINGER",
  })
  void severalFingersHaveOneAnswer(String answers, Answer answer) {
    List<PrintComparison> prints =
        answers
            .chars()
            .mapToObj(
                letter ->
                    switch (letter) {
                      case 'S' ->
                          PrintComparison.same(FingerPosition.LEFT_INDEX, 90, Optional.empty());
                      case 'D' ->
                          PrintComparison.different(
                              FingerPosition.LEFT_INDEX,
                              PrintComparison.Reason.FIRST_MATCHES_ANOTHER,
                              3,
                              FingerPosition.LEFT_RING,
                              80);
                      default ->
                          PrintComparison.untold(
                              FingerPosition.LEFT_INDEX, PrintComparison.Reason.NOT_ALIKE, 3);
                    })
            .toList();
    assertEquals(answer, new FingerComparison(prints).answer());
  }
}
