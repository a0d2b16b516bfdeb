package ridgeproof.examination.rules.ridges;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.Examiner;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.SampleCard;
import ridgeproof.examination.SampleRecords;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.RidgeAnalysis;
import ridgeproof.examination.facts.RidgeAnalysis.Impression;
import ridgeproof.examination.facts.SequenceComparison;
import ridgeproof.examination.rules.Rule;
import ridgeproof.examination.rules.transaction.TransactionRules;
import ridgeproof.finding.Finding;
import ridgeproof.finding.FindingLog;
import ridgeproof.imagery.header.ImageHeaders;
import ridgeproof.ridges.map.RotatedBox;
import ridgeproof.ridges.matching.SequenceResult;
import ridgeproof.ridges.quality.FingerAnalysis;
import ridgeproof.ridges.quality.FingerAnalysis.Doubt;
import ridgeproof.ridges.quality.QualityScore;
import ridgeproof.ridges.segmentation.Segment;
import ridgeproof.ridges.segmentation.Slap;
import ridgeproof.spec.layout.FingerPosition;
import ridgeproof.testing.ReferenceFiles;
import ridgeproof.transaction.record.ByteSource;

class RidgeRulesTest {

  private static final FingerAnalysis NOTHING =
      new FingerAnalysis(List.of(Doubt.NO_RIDGES), Optional.empty(), QualityScore.NONE);
  private static final List<FingerPosition> RIGHT_FOUR = FingerPosition.shownBy(13);

  @Test
  void anImageWithoutRidgesIsTold() {
    RidgeAnalysis facts =
        new RidgeAnalysis(
            Impression.ROLLED, Map.of(FingerPosition.RIGHT_THUMB, NOTHING), Optional.empty());
    assertEquals(List.of("RP-RDG-001"), told(new RidgeLimitsRule(), seen(facts, List.of())));
  }

  @Test
  void aFingerThatASlapDoesNotShowIsToldByItsName() {
    List<Finding> found =
        check(new SlapRule(), seen(slap(Optional.empty(), 3), List.of()), Optional.empty());
    assertEquals(List.of("RP-RDG-020"), found.stream().map(Finding::ruleId).toList());
    assertEquals(
        OptionalInt.of(FingerPosition.RIGHT_LITTLE.code()), found.get(0).location().position());
    assertEquals(List.of(), told(new SlapRule(), seen(slap(Optional.empty(), 4), List.of())));
  }

  private static Rule declaredMissing() {
    return TransactionRules.all().stream()
        .filter(rule -> rule.ids().contains("RP-TXN-054"))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void morePrintsThanFingersOfAHandWithAnAnnotationAreTold() {
    Optional<Slap> slap = slap(Optional.empty(), 3).slap();
    RidgeAnalysis surplus = new RidgeAnalysis(Impression.PLAIN, Map.of(), slap, 1);
    assertEquals(List.of("RP-TXN-054"), told(declaredMissing(), seen(surplus, List.of())));
    RidgeAnalysis right = new RidgeAnalysis(Impression.PLAIN, Map.of(), slap);
    assertEquals(List.of(), told(declaredMissing(), seen(right, List.of())));
  }

  @Test
  void whereItCannotBeToldWhichFingerHasNoPrintNoneIsNamed() {
    List<Segment> segments = new ArrayList<>();
    for (Segment segment : slap(Optional.empty(), 3).slap().orElseThrow().segments()) {
      List<Segment.Doubt> doubts =
          segment.box().isPresent() ? List.of(Segment.Doubt.PLACE_AMBIGUOUS) : List.of();
      segments.add(new Segment(segment.position(), segment.box(), 0.4, 100, doubts));
    }
    RidgeAnalysis facts =
        new RidgeAnalysis(
            Impression.PLAIN, Map.of(), Optional.of(new Slap(segments, 0, Optional.empty())));
    List<Finding> found = check(new SlapRule(), seen(facts, List.of()), Optional.empty());
    assertEquals(List.of("RP-RDG-020"), found.stream().map(Finding::ruleId).toList());
    assertEquals(OptionalInt.of(13), found.get(0).location().position());
  }

  @Test
  void aHandThatLeansIsToldOnceOfTheImage() {
    RidgeLimitEvaluator judge = new RidgeLimitEvaluator(SampleCard.TABLES.ridgeLimits());
    RidgeAnalysis upright = slap(Optional.empty(), 4);
    assertEquals(Set.of(), SlapRule.faultsOfHand(upright, judge).keySet());
    RidgeAnalysis tilted =
        new RidgeAnalysis(
            Impression.PLAIN,
            Map.of(),
            Optional.of(new Slap(upright.slap().orElseThrow().segments(), 30, Optional.empty())));
    assertEquals(Set.of("RP-RDG-009"), SlapRule.faultsOfHand(tilted, judge).keySet());
    assertEquals(List.of("RP-RDG-009"), told(new SlapRule(), seen(tilted, List.of())));
  }

  @Test
  void aBoxThatTheRecordMarksElsewhereIsTold() {
    RidgeAnalysis slap = slap(Optional.empty(), 4);
    List<List<String>> right = List.of(List.of("2", "0", "10", "0", "20"));
    List<List<String>> wrong = List.of(List.of("2", "20", "30", "0", "20"));
    assertEquals(List.of(), told(new SlapRule(), seen(slap, right)));
    assertEquals(List.of("RP-RDG-021"), told(new SlapRule(), seen(slap, wrong)));
  }

  /** The middle of the print lies at 5 across and 10 down. */
  @Test
  void theMiddleOfThePrintLiesWithinTheBoxToItsEdge() {
    RidgeAnalysis slap = slap(Optional.empty(), 4);
    for (List<String> box :
        List.of(box(5, 25, 0, 20), box(0, 5, 0, 20), box(0, 10, 10, 20), box(0, 10, 2, 10))) {
      assertEquals(List.of(), told(new SlapRule(), seen(slap, List.of(box))), box::toString);
    }
    for (List<String> box :
        List.of(box(6, 25, 0, 20), box(0, 4, 0, 20), box(0, 10, 11, 20), box(0, 10, 0, 9))) {
      assertEquals(
          List.of("RP-RDG-021"), told(new SlapRule(), seen(slap, List.of(box))), box::toString);
    }
  }

  private static List<String> box(int left, int right, int top, int bottom) {
    return SampleRecords.box(2, left, right, top, bottom);
  }

  @Test
  void aBoxIsHeldAgainstThePrintOfItsOwnFinger() {
    RidgeAnalysis slap = slap(Optional.empty(), 3);
    List<List<String>> ofThird = List.of(SampleRecords.box(3, 9, 17, 0, 20));
    assertEquals(List.of("RP-RDG-020"), told(new SlapRule(), seen(slap, ofThird)));
    List<List<String>> ofNone = List.of(SampleRecords.box(5, 0, 8, 0, 20));
    assertEquals(List.of("RP-RDG-020"), told(new SlapRule(), seen(slap, ofNone)));
    List<Finding> found =
        check(
            new SlapRule(),
            seen(slap(Optional.empty(), 4), List.of(SampleRecords.box(3, 0, 8, 0, 20))),
            Optional.empty());
    assertEquals(
        List.of("a segment around the print at 13 across, 10 down"),
        found.stream().map(Finding::required).toList());
  }

  @Test
  void theSlapIsToldHowManyPrintsWereFound() {
    List<Finding> found =
        check(new SlapRule(), seen(slap(Optional.empty(), 3), List.of()), Optional.empty());
    assertEquals(
        List.of("3 of 4 prints; none where this finger belongs"),
        found.stream().map(f -> f.observed().text()).toList());
  }

  @Test
  void fingersThatLieAsThoseOfTheOtherHandAreTold() {
    SequenceComparison sequence =
        new SequenceComparison(new SequenceResult(List.of(), List.of(), 40), Map.of(), Map.of());
    ExaminedImage right = seen(slap(Optional.of(FingerPosition.Hand.RIGHT), 4), List.of());
    ExaminedImage left = seen(slap(Optional.of(FingerPosition.Hand.LEFT), 4), List.of());
    assertEquals(List.of(), check(new SequenceRule(), right, Optional.of(sequence)));
    assertEquals(
        List.of("RP-SEQ-010"),
        check(new SequenceRule(), left, Optional.of(sequence)).stream()
            .map(Finding::ruleId)
            .toList());
  }

  @Test
  void onTheReferenceCardNoFingerIsContradictedAndRetakesComeOneAnImage() {
    FindingsReport report =
        new Examiner(SampleCard.TABLES, ridgeproof.transaction.reader.ParseLimits.standard())
            .examine(
                ByteSource.of(ReferenceFiles.read("type-4-tpcard.an2")),
                ExaminationOptions.standard());
    List<String> told = report.findings().stream().map(Finding::ruleId).toList();
    assertTrue(told.stream().noneMatch(id -> id.matches("RP-SEQ-00[1-6]")), told::toString);
    // Two clear prints of one finger that hardly overlap do not match: advice, no more.
    assertTrue(told.contains("RP-SEQ-008"), told::toString);
    List<Integer> retaken =
        report.actions().stream()
            .filter(
                action ->
                    action.remedy().matches("(Recapture|Consider recapturing|Rescan|Check) the .*"))
            .filter(action -> action.findings().get(0).ruleId().startsWith("RP-RDG"))
            .map(action -> action.findings().get(0).location().record().orElseThrow())
            .toList();
    assertEquals(retaken.stream().distinct().toList(), retaken);
    assertTrue(!retaken.isEmpty(), told::toString);
    assertEquals(14, report.images().stream().filter(i -> i.ridges().isPresent()).count());
  }

  private static RidgeAnalysis slap(Optional<FingerPosition.Hand> hand, int found) {
    List<Segment> segments = new ArrayList<>();
    for (int i = 0; i < RIGHT_FOUR.size(); i++) {
      Optional<RotatedBox> box =
          i < found ? Optional.of(new RotatedBox(5 + 8 * i, 10, 8, 16, 0)) : Optional.empty();
      segments.add(new Segment(RIGHT_FOUR.get(i), box, 1, 100, List.of()));
    }
    return new RidgeAnalysis(Impression.PLAIN, Map.of(), Optional.of(new Slap(segments, 0, hand)));
  }

  /** An image of a right slap, as it would be after looking at its ridges. */
  private static ExaminedImage seen(RidgeAnalysis facts, List<List<String>> boxes) {
    SampleCard card =
        SampleRecords.tagged(
            SampleRecords.RIGHT_SLAP, record -> boxes.isEmpty() ? record : record.with(21, boxes));
    ExaminedImage image =
        card.examine().images().stream()
            .filter(i -> i.position().equals(OptionalInt.of(13)))
            .findFirst()
            .orElseThrow();
    return image.opened(
        ImageHeaders.read(image.data().orElseThrow()),
        image.pixels(),
        List.of(),
        Optional.of(facts));
  }

  private static List<String> told(Rule rule, ExaminedImage image) {
    return check(rule, image, Optional.empty()).stream().map(Finding::ruleId).toList();
  }

  private static List<Finding> check(
      Rule rule, ExaminedImage image, Optional<SequenceComparison> sequence) {
    FindingsReport card = SampleCard.rolled().examine();
    FindingLog log = new FindingLog(SampleCard.TABLES, 10);
    rule.check(
        new ExaminationInput(
            card.transaction(),
            SampleCard.TABLES,
            Depth.RIDGES,
            List.of(image),
            Optional.empty(),
            false,
            ExaminationOptions.standard(),
            sequence),
        log);
    return log.findings();
  }
}
