package ridgeproof.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.comparison.ImageDifference;
import ridgeproof.examination.comparison.RecordPair;
import ridgeproof.examination.comparison.TransactionComparison;
import ridgeproof.examination.comparison.ValueDifference;
import ridgeproof.finding.Finding;

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
    assertTrue(text.contains("Noted, not counted"), text);
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
        List.of("RP-TXN-004"), lost.gained().stream().map(Finding::ruleId).distinct().toList());
    TransactionComparison found = compare(PilotCard.ascii().without(4), PilotCard.ascii());
    assertEquals(1, found.added().size());
    assertEquals(
        List.of("RP-TXN-004"), found.lost().stream().map(Finding::ruleId).distinct().toList());
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
  void pixelsThatDifferAreMeasured() {
    TransactionComparison comparison = compare(PilotCard.ascii(), PilotCard.ascii().brightened(2));
    RecordPair changed =
        comparison.pairs().stream().filter(RecordPair::differs).findFirst().orElseThrow();
    ImageDifference.DifferentPixels pixels =
        assertInstanceOf(ImageDifference.DifferentPixels.class, changed.image().orElseThrow());
    assertEquals(100, pixels.largest());
    assertEquals(1, pixels.pixels());
    assertEquals(100.0 / (PilotCard.WIDTH * PilotCard.HEIGHT), pixels.mean(), 1e-12);
    assertEquals(1, comparison.pairs().stream().filter(RecordPair::differs).count());
  }

  @Test
  void anAnswerIsNoticedByItsControlReference() {
    TransactionComparison comparison =
        compare(
            PilotCard.ascii(), PilotCard.ascii().header(9, "PILOT-0002").header(10, "PILOT-0001"));
    assertTrue(comparison.secondRefersToFirst());
    assertFalse(comparison.firstRefersToSecond());
    assertTrue(text(comparison).contains("its 1.010 is the 1.009 of the first"));
  }

  @Test
  void jsonAndTextSayTheSame() {
    TransactionComparison comparison =
        compare(PilotCard.ascii(), PilotCard.ascii().brightened(2).particular(18, "SPECIMEN,BEA"));
    FileFacts file = new FileFacts("card.an2", 1, "0".repeat(64));
    JsonNode json =
        Reports.parse(ComparisonJson.render(file, file, comparison, RenderOptions.standard()));
    assertFalse(json.get("same").asBoolean());
    assertEquals(16, json.get("pairs").size());
    assertEquals("different pixels", json.at("/pairs/3/image/level").asText());
    assertEquals(100, json.at("/pairs/3/image/largestDifference").asInt());
    assertTrue(text(comparison).startsWith("DIFFERENT"));
  }
}
