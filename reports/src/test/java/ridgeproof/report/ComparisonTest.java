package ridgeproof.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.comparison.ComparisonOutcome;
import ridgeproof.examination.comparison.FindingChanges;
import ridgeproof.examination.comparison.FingerChange;
import ridgeproof.examination.comparison.IgnoredFields;
import ridgeproof.examination.comparison.ImageDifference;
import ridgeproof.examination.comparison.ImageLevel;
import ridgeproof.examination.comparison.PersonDoubt;
import ridgeproof.examination.comparison.PrintComparison;
import ridgeproof.examination.comparison.RecordPair;
import ridgeproof.examination.comparison.TransactionComparison;
import ridgeproof.examination.comparison.ValueDifference;
import ridgeproof.examination.facts.Depth;
import ridgeproof.finding.Finding;
import ridgeproof.report.comparison.ComparisonJson;
import ridgeproof.report.comparison.ComparisonText;
import ridgeproof.spec.layout.FingerPosition;

class ComparisonTest {

  private static TransactionComparison compare(PilotCard first, PilotCard second) {
    return Renderings.compare(first.bytes(), second.bytes());
  }

  private static List<ValueDifference> counted(TransactionComparison comparison) {
    return comparison.pairs().stream()
        .flatMap(pair -> pair.differences().stream())
        .filter(difference -> !difference.ignored())
        .toList();
  }

  private static String text(TransactionComparison comparison) {
    FileFacts file = new FileFacts("card.an2", 1, "0".repeat(64));
    return ComparisonText.render(file, file, comparison, RenderOptions.standard());
  }

  @Test
  void aFileIsTheSameAsItself() {
    TransactionComparison comparison = compare(PilotCard.ascii(), PilotCard.ascii());
    assertTrue(comparison.same());
    assertTrue(comparison.sameBytes());
    assertEquals(16, comparison.pairs().size());
  }

  @Test
  void datesTimesAndControlNumbersAreNotedAndDoNotCount() {
    TransactionComparison comparison =
        compare(
            PilotCard.ascii(),
            PilotCard.ascii()
                .header(5, "20260303")
                .header(9, "PILOT-0002")
                .header(14, "20260303101500Z"));
    assertTrue(comparison.same());
    assertFalse(comparison.sameBytes());
    String text = text(comparison);
    assertTrue(text.contains("Ignored differences"), text);
    assertTrue(text.contains("1.009 TCN: \"PILOT-0001\" became \"PILOT-0002\""), text);
  }

  @Test
  void aChangedParticularCountsAndIsMasked() {
    TransactionComparison comparison =
        compare(PilotCard.ascii(), PilotCard.ascii().particular(18, "SPECIMEN,BEA"));
    assertFalse(comparison.same());
    assertEquals(1, counted(comparison).size());
    String text = text(comparison);
    assertTrue(text.contains("2.018 NAM: changed, values [masked]"), text);
    assertFalse(text.contains("SPECIMEN"), text);
  }

  @Test
  void aRecordThatOnlyOneHasIsAddedOrRemoved() {
    TransactionComparison lost = compare(PilotCard.ascii(), PilotCard.ascii().without(4));
    assertEquals(1, lost.removed().size());
    assertEquals(0, lost.added().size());
    assertEquals(
        List.of("RP-TXN-004"),
        lost.changes().added().stream().map(Finding::ruleId).distinct().toList());
    assertTrue(
        text(lost).replaceAll("\\s+", " ").contains("It lacks 1 print of the first file"),
        text(lost));
    TransactionComparison found = compare(PilotCard.ascii().without(4), PilotCard.ascii());
    assertEquals(1, found.added().size());
    assertEquals(
        List.of("RP-TXN-004"),
        found.changes().resolved().stream().map(Finding::ruleId).distinct().toList());
    assertFalse(text(found).contains("It lacks"), text(found));
  }

  @Test
  void aRecordElsewhereIsMovedAndItsNeighboursAreNot() {
    TransactionComparison comparison =
        compare(
            PilotCard.ascii(),
            PilotCard.ascii().inOrder(List.of(2, 3, 4, 5, 6, 7, 1, 8, 9, 10, 11, 12, 13, 14)));
    assertEquals(
        List.of(3),
        comparison.pairs().stream()
            .filter(RecordPair::moved)
            .map(pair -> pair.first().ordinal())
            .toList());
    assertEquals(List.of(), counted(comparison));
  }

  @Test
  void anItemThatDiffersIsNamedAlone() {
    TransactionComparison comparison =
        compare(
            PilotCard.ascii().header(13, "NORAM\u001f11.0"),
            PilotCard.ascii().header(13, "NORAM\u001f11.1"));
    ValueDifference difference = counted(comparison).get(0);
    assertEquals("1.013", difference.field().toString());
    assertEquals(2, difference.item().getAsInt());
    assertEquals("11.0", difference.first().orElseThrow());
    assertEquals("11.1", difference.second().orElseThrow());
  }

  @Test
  void anInsertedSubfieldIsOneAddition() {
    TransactionComparison comparison =
        compare(
            PilotCard.ascii().header(16, "A\u001fB\u001f1\u001eC\u001fD\u001f1"),
            PilotCard.ascii()
                .header(16, "A\u001fB\u001f1\u001eX\u001fY\u001f1\u001eC\u001fD\u001f1"));
    assertEquals(1, counted(comparison).size());
    assertTrue(counted(comparison).get(0).first().isEmpty());
    assertEquals(2, counted(comparison).get(0).subfield().getAsInt());
  }

  @Test
  void oneCaptureEncodedAgainIsMeasuredAndIsTheSamePrint() {
    TransactionComparison comparison = compare(PilotCard.ascii(), PilotCard.ascii().brightened(2));
    RecordPair changed =
        comparison.pairs().stream().filter(RecordPair::differs).findFirst().orElseThrow();
    ImageDifference.DifferentPixels pixels =
        assertInstanceOf(ImageDifference.DifferentPixels.class, changed.image().orElseThrow());
    assertEquals(100, pixels.largest());
    assertEquals(1, pixels.pixels());
    assertEquals(100.0 / (PilotCard.WIDTH * PilotCard.HEIGHT), pixels.mean(), 1e-12);
    assertEquals(1, comparison.pairs().stream().filter(RecordPair::differs).count());
    assertEquals(ImageLevel.SAME_CAPTURE, changed.level().orElseThrow());
    assertTrue(text(comparison).contains("1 of"), text(comparison));
  }

  @Test
  void pixelsOfTwoCapturesAreNotCounted() {
    String text = text(compare(PilotCard.ascii(), PilotCard.ascii().recaptured(2)));
    assertFalse(text.contains("pixels differ"), text);
  }

  @Test
  void eachFingerIsListedBeforeAndAfter() {
    TransactionComparison comparison =
        compare(PilotCard.ascii().without(4), PilotCard.ascii().recaptured(2));
    List<FingerChange> rolled = comparison.fingers().stream().filter(FingerChange::rolled).toList();
    assertEquals(10, rolled.size());
    assertEquals(FingerChange.Trend.ADDED, rolled.get(3).trend());
    assertFalse(rolled.get(1).same());
    assertTrue(rolled.get(2).same());
    assertEquals(FingerChange.Trend.SAME, rolled.get(2).trend());
  }

  @Test
  void pixelsAreNotLookedAtAtStructureDepthAndRidgesOnlyWhenAsked() {
    byte[] first = PilotCard.ascii().bytes();
    byte[] second = PilotCard.ascii().recaptured(2).bytes();
    Map<Depth, ImageLevel> levels =
        Map.of(
            Depth.STRUCTURE, ImageLevel.CANNOT_BE_TOLD,
            Depth.IMAGES, ImageLevel.DIFFERENT_PIXELS,
            Depth.RIDGES, ImageLevel.CANNOT_BE_TOLD);
    levels.forEach(
        (depth, level) -> {
          TransactionComparison comparison = Renderings.compare(first, second, depth);
          RecordPair changed = changed(comparison);
          assertEquals(level, changed.level().orElseThrow(), depth.name());
          assertEquals(depth == Depth.RIDGES, changed.fingers().isPresent(), depth.name());
          assertFalse(comparison.same(), depth.name());
        });
    assertTrue(
        text(Renderings.compare(first, second, Depth.STRUCTURE))
            .contains("different bytes; images were not decoded"));
  }

  @Test
  void aPrintThatIsNotFoundIsNoEvidence() {
    TransactionComparison comparison = compare(PilotCard.ascii(), PilotCard.ascii().recaptured(2));
    PrintComparison print = changed(comparison).fingers().orElseThrow().prints().get(0);
    assertEquals(FingerPosition.RIGHT_INDEX, print.finger());
    assertEquals(PrintComparison.Answer.CANNOT_BE_TOLD, print.answer());
    assertEquals(PrintComparison.Reason.NO_PRINT_IN_FIRST, print.reason());
    assertTrue(
        text(comparison).contains("right index finger: not determined, similarity 0; no print"));
  }

  @Test
  void aFingerThatOneOfThemDeclaresMissingIsSaidSo() {
    TransactionComparison comparison =
        compare(
            PilotCard.ascii(),
            PilotCard.ascii().recaptured(13).particular(84, "3\u001fXX\u001e4\u001fUP"));
    List<PrintComparison> prints = changed(comparison, 13).fingers().orElseThrow().prints();
    assertEquals(4, prints.size());
    TransactionComparison both =
        compare(
            PilotCard.ascii().particular(84, "3\u001fXX"),
            PilotCard.ascii().recaptured(13).particular(84, "3\u001fXX"));
    assertEquals(
        List.of(FingerPosition.RIGHT_INDEX, FingerPosition.RIGHT_RING, FingerPosition.RIGHT_LITTLE),
        changed(both, 13).fingers().orElseThrow().prints().stream()
            .map(PrintComparison::finger)
            .toList());
  }

  @Test
  void anImageWithoutAResolutionCannotBeTold() {
    TransactionComparison comparison =
        compare(PilotCard.ascii().print(8, "0"), PilotCard.ascii().print(8, "0").recaptured(2));
    assertEquals(
        PrintComparison.Reason.UNUSABLE_RESOLUTION,
        changed(comparison).fingers().orElseThrow().prints().get(0).reason());
  }

  @Test
  void dataThatIsNoImageIsComparedToo() {
    byte[] first = withTemplate(new byte[] {1, 2, 3, 4});
    assertTrue(Renderings.compare(first, withTemplate(new byte[] {1, 2, 3, 4})).same());
    TransactionComparison comparison =
        Renderings.compare(first, withTemplate(new byte[] {1, 2, 3, 5}));
    assertFalse(comparison.same());
    ValueDifference difference = counted(comparison).get(0);
    assertEquals("99.999", difference.field().toString());
    assertEquals("4 other bytes of data", difference.second().orElseThrow());
  }

  private static byte[] withTemplate(byte[] template) {
    return PilotCard.ascii().bytesWith(template);
  }

  @Test
  void whatDoesNotCountIsSaid() {
    TransactionComparison comparison =
        compare(PilotCard.ascii(), PilotCard.ascii().header(9, "PILOT-0002"));
    assertTrue(
        text(comparison)
            .replaceAll("\\s+", " ")
            .contains("Ignored fields (--ignore): LEN, IDC, 1.003, 1.005, 1.009, 1.010, 1.014."),
        text(comparison));
    assertEquals(List.of("LEN", "1.014", "2.022"), IgnoredFields.parse("2.022,1.014,LEN").names());
    assertEquals(List.of(), IgnoredFields.parse("").names());
  }

  private static List<String> rules(List<Finding> findings) {
    return FindingChanges.problems(findings).stream().map(Finding::ruleId).toList();
  }

  @Test
  void whatIsResolvedNewAndStillPresentComesFirst() {
    TransactionComparison comparison =
        Renderings.compare(
            PilotCard.ascii().header(5, "20261399").without(4).bytes(),
            PilotCard.ascii().without(4).without(5).bytes(),
            Depth.IMAGES);
    assertEquals(List.of("RP-FLD-008"), rules(comparison.changes().resolved()));
    assertEquals(List.of("RP-TXN-004"), rules(comparison.changes().added()));
    List<String> present = rules(comparison.changes().present());
    assertTrue(present.contains("RP-TXN-004"), present.toString());
    assertEquals(
        comparison.second().findings().size(),
        comparison.changes().present().size() + comparison.changes().added().size());
    String text = text(comparison);
    assertTrue(
        text.contains(
            "HOLD in both files: 1 resolved, " + present.size() + " still present, 1 new."),
        text);
    assertTrue(text.indexOf("Resolved") < text.indexOf("Still present"), text);
    assertTrue(text.indexOf("\nNew\n") < text.indexOf("Differences"), text);
  }

  @Test
  void theSameFileUnderOtherIdcsAndInAnotherOrderHasTheSameFindings() {
    List<Integer> order = List.of(9, 2, 3, 14, 5, 6, 7, 1, 8, 10, 11, 12, 13);
    TransactionComparison comparison =
        compare(PilotCard.ascii().without(4), PilotCard.ascii().inOrder(order));
    assertEquals(List.of(), comparison.changes().resolved());
    assertEquals(List.of(), comparison.changes().added());
    assertEquals(records(comparison), comparison.pairs().size());
    assertEquals(List.of(), counted(comparison));
    assertEquals(ComparisonOutcome.STILL_PRESENT, comparison.outcome());
  }

  private static int records(TransactionComparison comparison) {
    return comparison.first().transaction().records().size();
  }

  @Test
  void aCorrectedFileIsGoodNews() {
    byte[] whole = PilotCard.ascii().bytes();
    byte[] lacking = PilotCard.ascii().without(4).bytes();
    TransactionComparison corrected = Renderings.compare(lacking, whole, Depth.STRUCTURE);
    TransactionComparison spoilt = Renderings.compare(whole, lacking, Depth.STRUCTURE);
    assertEquals(ComparisonOutcome.WORSE, spoilt.outcome());
    assertTrue(
        Set.of(ComparisonOutcome.RESOLVED, ComparisonOutcome.BETTER).contains(corrected.outcome()),
        corrected.outcome().name());
    assertTrue(text(corrected).contains("1 resolved"), text(corrected));
    assertTrue(text(corrected).contains("0 new."), text(corrected));
  }

  @Test
  void aProblemWhoseValueChangedIsStillPresent() {
    TransactionComparison comparison =
        compare(PilotCard.ascii().header(5, "20261399"), PilotCard.ascii().header(5, "20261398"));
    assertEquals(List.of(), rules(comparison.changes().resolved()));
    assertEquals(List.of(), rules(comparison.changes().added()));
    assertTrue(rules(comparison.changes().present()).contains("RP-FLD-008"));
  }

  @Test
  void theSamePrintsUnderAnotherNameAreAWarning() {
    TransactionComparison renamed =
        compare(PilotCard.ascii(), PilotCard.ascii().particular(18, "SPECIMEN,BEA"));
    assertEquals(
        PersonDoubt.Kind.SAME_PRINTS_OTHER_DATA, renamed.personDoubt().orElseThrow().kind());
    String text = text(renamed);
    assertTrue(text.contains("Same prints, different biographic data"), text);
    assertTrue(text.contains("(2.018)"), text);
    assertFalse(text.contains("BEA"), text);
    assertTrue(
        compare(PilotCard.ascii(), PilotCard.ascii().particular(67, "X\u001fY\u001fZ"))
            .personDoubt()
            .isEmpty());
  }

  private static RecordPair changed(TransactionComparison comparison) {
    return comparison.pairs().stream().filter(RecordPair::differs).findFirst().orElseThrow();
  }

  private static RecordPair changed(TransactionComparison comparison, int position) {
    return comparison.pairs().stream()
        .filter(pair -> pair.first().text(13).equals(Optional.of(Integer.toString(position))))
        .filter(pair -> pair.first().type() == 14)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void anAnswerIsNoticedByItsControlReference() {
    TransactionComparison comparison =
        compare(
            PilotCard.ascii(), PilotCard.ascii().header(9, "PILOT-0002").header(10, "PILOT-0001"));
    assertTrue(comparison.secondRefersToFirst());
    assertFalse(comparison.firstRefersToSecond());
    assertTrue(text(comparison).contains("its 1.010 is 1.009 of the first file"));
  }

  @Test
  void jsonAndTextSayTheSame() {
    TransactionComparison comparison =
        compare(PilotCard.ascii(), PilotCard.ascii().recaptured(2).particular(18, "SPECIMEN,BEA"));
    FileFacts file = new FileFacts("card.an2", 1, "0".repeat(64));
    JsonNode json =
        Reports.parse(ComparisonJson.render(file, file, comparison, RenderOptions.standard()));
    assertFalse(json.get("same").asBoolean());
    assertEquals(16, json.get("pairs").size());
    assertEquals("not determined", json.at("/pairs/3/image/level").asText());
    assertTrue(json.at("/pairs/3/image/grayLevels").isMissingNode());
    assertEquals("NO_PRINT_IN_FIRST", json.at("/pairs/3/image/fingers/0/reason").asText());
    assertEquals("STILL_PRESENT", json.get("outcome").asText());
    assertTrue(text(comparison).startsWith("STILL PRESENT"), text(comparison));
  }
}
