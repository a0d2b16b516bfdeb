package ridgeproof.examination.rules.ridges;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.SampleCard;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.examination.facts.SequenceComparison;
import ridgeproof.examination.facts.SequenceComparison.SeenFinger;
import ridgeproof.finding.Finding;
import ridgeproof.finding.FindingLog;
import ridgeproof.ridges.matching.FingerMatchResult;
import ridgeproof.ridges.matching.FingerMatchResult.Reason;
import ridgeproof.ridges.matching.FingerMatchResult.Verdict;
import ridgeproof.ridges.matching.Minutiae;
import ridgeproof.ridges.matching.SequenceError;
import ridgeproof.ridges.matching.SequenceError.Kind;
import ridgeproof.ridges.matching.SequenceResult;
import ridgeproof.ridges.quality.FingerAnalysis;
import ridgeproof.ridges.quality.FingerMeasures;
import ridgeproof.ridges.quality.QualityScore;
import ridgeproof.spec.layout.FingerPosition;

class SequenceRuleTest {

  private static final FingerPosition INDEX = FingerPosition.RIGHT_INDEX;
  private static final FingerPosition MIDDLE = FingerPosition.RIGHT_MIDDLE;
  private static final int PATCH = 240;

  @Test
  void eachDisorderHasARuleOfItsOwn() {
    assertEquals(List.of("RP-SEQ-001"), told(Kind.FOUND_ELSEWHERE));
    assertEquals(List.of("RP-SEQ-002"), told(Kind.EXCHANGED));
    assertEquals(List.of("RP-SEQ-003"), told(Kind.THUMBS_EXCHANGED));
    assertEquals(List.of("RP-SEQ-004"), told(Kind.HANDS_EXCHANGED));
    assertEquals(List.of("RP-SEQ-005"), told(Kind.ROLLED_TWICE));
    assertEquals(List.of("RP-SEQ-006"), told(Kind.PLAIN_TWICE));
    assertEquals(List.of("RP-SEQ-011"), told(Kind.ROTATED));
    assertEquals(List.of("RP-SEQ-012"), told(Kind.SHIFTED));
  }

  private static List<String> told(Kind kind) {
    return ids(
        check(List.of(), List.of(new SequenceError(kind, List.of(INDEX, MIDDLE), true, 90)), 40));
  }

  /** Place, what was found, and the evidence, each exactly. */
  @Test
  void aDisorderIsToldWithItsPlaceItsFingersAndItsEvidence() {
    assertEquals(
        List.of(
            "RP-SEQ-002 record 3 position 2: right index finger, right middle finger;"
                + " similarity 90.0 (limit 40.0)"),
        lines(errors(Kind.EXCHANGED, true, 0, INDEX, MIDDLE)));
    assertEquals(
        List.of(
            "RP-SEQ-011 record 3 position 2: right index finger, right middle finger; some only"
                + " as a group; similarity 90.0 (limit 40.0), strong evidence"
                + " from all prints together, about 500 to 1 (decimal logarithm) 2.7"),
        lines(errors(Kind.ROTATED, false, 2.7, INDEX, MIDDLE)));
    assertEquals(
        List.of("RP-SEQ-001 record 3 position 2: right index finger; similarity 90.0 (limit 40.0)"),
        lines(errors(Kind.FOUND_ELSEWHERE, false, 0, INDEX)));
    assertEquals(
        List.of(
            "RP-SEQ-006 record 4 position 2: right index finger, right middle finger;"
                + " similarity 90.0 (limit 40.0)"),
        lines(errors(Kind.PLAIN_TWICE, true, 0, INDEX, MIDDLE)));
    assertEquals(
        List.of("RP-SEQ-001 file: right middle finger; similarity 90.0 (limit 40.0)"),
        lines(errors(Kind.FOUND_ELSEWHERE, true, 0, MIDDLE)));
  }

  /** Three long names of fingers and the note fit into what was found. */
  @Test
  void aStepHasTheFingersInOnePairOfParentheses() {
    List<Finding> found =
        errors(
            Kind.ROTATED,
            false,
            2.7,
            FingerPosition.RIGHT_MIDDLE,
            FingerPosition.RIGHT_INDEX,
            FingerPosition.RIGHT_LITTLE);
    String remedy = found.get(0).remedy();
    assertTrue(
        remedy.contains(
            "(right middle finger, right index finger, right little finger; some only as a"
                + " group)"),
        remedy);
  }

  private static List<Finding> errors(
      Kind kind, boolean mutual, double odds, FingerPosition... fingers) {
    return check(
        List.of(), List.of(new SequenceError(kind, List.of(fingers), mutual, 90, odds)), 40);
  }

  @Test
  void anAnswerIsToldWithItsPlaceItsReasonAndItsEvidence() {
    String own = "similarity with its rolled print 5.0 (limit 40.0)";
    String other = ", similarity with the rolled print of finger 3 80.0 (limit 40.0)";
    String untold = "RP-SEQ-007 record 4 position 2: ";
    assertEquals(
        List.of(
            "RP-SEQ-001 record 4 position 2: the plain print matches the rolled right middle"
                + " finger; "
                + own
                + other),
        lines(answered(Verdict.CONTRADICTED, Reason.MATCHES_ANOTHER_ROLL)));
    assertEquals(
        List.of(untold + "the plain print matches none of the rolled prints; " + own + other),
        lines(answered(Verdict.INCONCLUSIVE, Reason.MATCHES_NO_ROLL)));
    assertEquals(
        List.of(untold + "the plain print matches several rolled prints; " + own + other),
        lines(answered(Verdict.INCONCLUSIVE, Reason.MATCHES_SEVERAL_ROLLS)));
    assertEquals(
        List.of(untold + "too few minutiae to compare; " + own + other),
        lines(answered(Verdict.INCONCLUSIVE, Reason.TOO_FEW_MINUTIAE)));
    assertEquals(
        List.of(
            untold
                + "the image of the plain print shows fewer prints than fingers; "
                + own
                + other),
        lines(answered(Verdict.INCONCLUSIVE, Reason.PLACE_UNCERTAIN)));
    FingerMatchResult sure =
        new FingerMatchResult(
            INDEX,
            Verdict.CONTRADICTED,
            Reason.MATCHES_ANOTHER_ROLL,
            5,
            Optional.of(MIDDLE),
            80,
            1);
    assertEquals(
        List.of(
            "RP-SEQ-001 record 4 position 2: the plain print matches the rolled right middle"
                + " finger; "
                + own
                + other
                + ", "
                + EvidenceStrength.measure(1).name()
                + " 1.0"),
        lines(check(List.of(sure), List.of(), 40)));
  }

  /** A finger that a disorder names is not told again. */
  @Test
  void aFingerIsToldOnce() {
    FingerMatchResult answer =
        new FingerMatchResult(
            INDEX, Verdict.CONTRADICTED, Reason.MATCHES_ANOTHER_ROLL, 5, Optional.of(MIDDLE), 80);
    SequenceError error = new SequenceError(Kind.EXCHANGED, List.of(INDEX, MIDDLE), true, 90);
    assertEquals(List.of("RP-SEQ-002"), ids(check(List.of(answer), List.of(error), 40)));
  }

  private static List<String> lines(List<Finding> findings) {
    return findings.stream().map(SequenceRuleTest::line).toList();
  }

  private static String line(Finding finding) {
    String record =
        finding.location().record().isPresent()
            ? "record "
                + finding.location().record().getAsInt()
                + " position "
                + finding.location().position().orElse(0)
            : "file";
    String evidence =
        finding.evidence().stream()
            .map(
                measure ->
                    measure.name()
                        + " "
                        + measure.value()
                        + (measure.limit().isPresent()
                            ? " (limit " + measure.limit().getAsDouble() + ")"
                            : ""))
            .collect(Collectors.joining(", "));
    return finding.ruleId() + " " + record + ": " + finding.observed().text() + "; " + evidence;
  }

  @Test
  void theStrengthOfTheEvidenceIsToldInWordsAndNumbers() {
    SequenceError exchange =
        new SequenceError(Kind.EXCHANGED, List.of(INDEX, MIDDLE), true, 90, 2.7);
    Finding found = check(List.of(), List.of(exchange), 40).get(0);
    assertEquals(
        "strong evidence from all prints together, about 500 to 1 (decimal logarithm)",
        found.evidence().get(1).name());
    assertEquals(2.7, found.evidence().get(1).value());
  }

  @Test
  void oddsAreToldWithOneDigit() {
    assertOdds("weak evidence from all prints together, about 6 to 1", 0.75);
    assertOdds("moderate evidence from all prints together, about 10 to 1", 1);
    assertOdds("strong evidence from all prints together, about 100 to 1", 2);
    assertOdds("very strong evidence from all prints together, about 10,000 to 1", 4);
    assertOdds("very strong evidence from all prints together, more than 1,000,000 to 1", 6);
    assertOdds("moderate evidence from all prints together, about 30 to 1", 1.5);
    assertOdds("very strong evidence from all prints together, about 50,000 to 1", 4.7);
    assertOdds("very strong evidence from all prints together, more than 1,000,000 to 1", 7);
  }

  private static void assertOdds(String words, double odds) {
    assertEquals(words + " (decimal logarithm)", EvidenceStrength.measure(odds).name());
  }

  @Test
  void aConfirmedFingerIsNotTold() {
    assertEquals(List.of(), ids(answered(Verdict.CONFIRMED, Reason.MATCHES_OWN_ROLL)));
  }

  @Test
  void aContradictedFingerOfNoNamedDisorderIsToldAsAnother() {
    assertEquals(
        List.of("RP-SEQ-001"), ids(answered(Verdict.CONTRADICTED, Reason.MATCHES_ANOTHER_ROLL)));
  }

  @Test
  void anInconclusiveFingerIsNoEvidence() {
    for (Reason reason :
        List.of(Reason.MATCHES_NO_ROLL, Reason.MATCHES_SEVERAL_ROLLS, Reason.TOO_FEW_MINUTIAE)) {
      List<Finding> found = answered(Verdict.INCONCLUSIVE, reason);
      assertEquals(List.of("RP-SEQ-007"), ids(found), reason::name);
    }
    assertEquals(List.of(), ids(answered(Verdict.INCONCLUSIVE, Reason.NO_ROLL)));
  }

  /** Prints of this score and so many minutiae should match where they are of one finger. */
  @Test
  void twoClearPrintsThatDoNotMatchAreToldAsSuch() {
    assertEquals(List.of("RP-SEQ-008"), unmatched(print(45, BUSY), print(45, BUSY)));
    assertEquals(List.of("RP-SEQ-007"), unmatched(print(44, BUSY), print(45, BUSY)));
    assertEquals(List.of("RP-SEQ-007"), unmatched(print(45, BUSY), print(44, BUSY)));
    assertEquals(List.of("RP-SEQ-007"), unmatched(print(45, EMPTY), print(45, BUSY)));
    assertEquals(List.of("RP-SEQ-007"), unmatched(print(45, BUSY), print(45, EMPTY)));
  }

  private static final Minutiae EMPTY = minutiae(false);
  private static final Minutiae BUSY = minutiae(true);

  private static Minutiae minutiae(boolean inked) {
    Minutiae found = SpecimenPrints.minutiae(PATCH, inked);
    assertEquals(inked, found.count() >= 30, () -> found.count() + " minutiae");
    return found;
  }

  private static FingerAnalysis print(int score, Minutiae minutiae) {
    FingerMeasures measures =
        new FingerMeasures(null, null, null, null, null, null, null, null, minutiae, null);
    return new FingerAnalysis(List.of(), Optional.of(measures), new QualityScore(score, List.of()));
  }

  private static List<String> unmatched(FingerAnalysis roll, FingerAnalysis plain) {
    FingerMatchResult answer =
        new FingerMatchResult(
            INDEX, Verdict.INCONCLUSIVE, Reason.MATCHES_NO_ROLL, 5, Optional.empty(), 0);
    return ids(check(List.of(answer), List.of(), 40, roll, plain));
  }

  @Test
  void aLoweredThresholdIsSaidWithItsRisk() {
    List<Finding> found = check(List.of(), List.of(), 25);
    assertEquals(List.of("RP-SEQ-009"), ids(found));
    assertTrue(found.get(0).explanation().contains("risk"));
    assertEquals(List.of(), ids(check(List.of(), List.of(), 40)));
    assertEquals(List.of(), ids(check(List.of(), List.of(), 60)));
  }

  private static List<Finding> answered(Verdict verdict, Reason reason) {
    return check(
        List.of(new FingerMatchResult(INDEX, verdict, reason, 5, Optional.of(MIDDLE), 80)),
        List.of(),
        40);
  }

  private static List<Finding> check(
      List<FingerMatchResult> answers, List<SequenceError> irregularities, double threshold) {
    FingerAnalysis print = new FingerAnalysis(List.of(), Optional.empty(), QualityScore.NONE);
    return check(answers, irregularities, threshold, print, print);
  }

  private static List<Finding> check(
      List<FingerMatchResult> answers,
      List<SequenceError> irregularities,
      double threshold,
      FingerAnalysis roll,
      FingerAnalysis plain) {
    FindingsReport card = SampleCard.rolled().examine();
    SequenceComparison sequence =
        new SequenceComparison(
            new SequenceResult(answers, irregularities, threshold),
            Map.of(INDEX, new SeenFinger(card.images().get(0), roll)),
            Map.of(INDEX, new SeenFinger(card.images().get(1), plain)));
    ExaminationInput examinee =
        new ExaminationInput(
            card.transaction(),
            SampleCard.TABLES,
            Depth.RIDGES,
            List.of(),
            Optional.empty(),
            false,
            ExaminationOptions.standard(),
            Optional.of(sequence));
    FindingLog log = new FindingLog(SampleCard.TABLES, 10);
    new SequenceRule().check(examinee, log);
    return log.findings();
  }

  private static List<String> ids(List<Finding> findings) {
    return findings.stream().map(Finding::ruleId).toList();
  }
}
