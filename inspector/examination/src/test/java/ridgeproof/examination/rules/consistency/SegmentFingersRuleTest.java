package ridgeproof.examination.rules.consistency;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static ridgeproof.examination.SampleRecords.LEFT_SLAP;
import static ridgeproof.examination.SampleRecords.RIGHT_SLAP;
import static ridgeproof.examination.SampleRecords.box;
import static ridgeproof.examination.SampleRecords.boxes;
import static ridgeproof.examination.SampleRecords.count;
import static ridgeproof.examination.SampleRecords.found;
import static ridgeproof.examination.SampleRecords.reports;
import static ridgeproof.examination.SampleRecords.tagged;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ridgeproof.examination.SampleCard;
import ridgeproof.spec.rule.Severity;

class SegmentFingersRuleTest {

  private static SampleCard right(List<List<String>> segments) {
    return tagged(RIGHT_SLAP, record -> record.with(21, segments));
  }

  private static SampleCard left(int... fingers) {
    return tagged(LEFT_SLAP, record -> record.with(21, boxes(fingers)));
  }

  private static SampleCard withMissing(String finger, List<List<String>> segments) {
    return tagged(
        RIGHT_SLAP, record -> record.with(18, List.of(List.of(finger, "XX"))).with(21, segments));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "RP-TXN-019",
        "RP-TXN-020",
        "RP-TXN-021",
        "RP-TXN-022",
        "RP-TXN-023",
        "RP-TXN-035"
      })
  void aBoxForEachFingerInTheOrderOfTheHandIsNotReported(String rule) {
    assertFalse(reports(right(boxes(2, 3, 4, 5)), rule));
    assertFalse(reports(left(10, 9, 8, 7), rule));
    assertFalse(reports(withMissing("4", boxes(2, 3, 5)), rule));
    assertFalse(reports(SampleCard.rolledTagged(), rule));
  }

  @Test
  void theOrderOfTheSubfieldsMakesNoDifference() {
    List<List<String>> boxes = new ArrayList<>(boxes(2, 3, 4, 5));
    Collections.reverse(boxes);
    assertFalse(reports(right(boxes), "RP-TXN-023"));
  }

  @Test
  void aSegmentOfAnotherHandIsReported() {
    assertEquals(4, count(right(boxes(10, 9, 8, 7)), "RP-TXN-019"));
    assertEquals(1, count(right(boxes(1, 3, 4, 5)), "RP-TXN-019"));
  }

  @Test
  void aFingerBeyondTheFiveMayBeSegmentedToo() {
    assertFalse(reports(right(List.of(box(16, 0, 8, 0, 20))), "RP-TXN-019"));
  }

  @Test
  void aFingerInTwoPlacesIsReported() {
    assertEquals(1, count(right(boxes(2, 3, 3, 5)), "RP-TXN-020"));
  }

  @Test
  void aFingerWithoutSegmentIsReportedUnlessNoFingerHasOne() {
    assertEquals(1, count(right(boxes(2, 3, 5)), "RP-TXN-021"));
    assertEquals(0, count(SampleCard.rolledTagged(), "RP-TXN-021"));
  }

  @Test
  void aSegmentOfAFingerThatIsDeclaredMissingIsReported() {
    assertEquals(1, count(withMissing("4", boxes(2, 3, 4, 5)), "RP-TXN-022"));
  }

  @Test
  void fingersInTheOrderOfTheOtherHandAreReported() {
    assertTrue(reports(right(boxes(5, 4, 3, 2)), "RP-TXN-023"));
    assertTrue(reports(left(7, 8, 9, 10), "RP-TXN-023"));
    assertTrue(reports(right(boxes(2, 4, 3, 5)), "RP-TXN-023"));
  }

  @Test
  void aFingerThatIsDeclaredMissingInTheRecordOfTheOtherHandIsReported() {
    assertTrue(reports(withMissing("8", boxes(2, 3, 4, 5)), "RP-TXN-035"));
  }

  @Test
  void theSampleOfSegmentsConforms() {
    assertEquals(
        List.of(),
        right(boxes(2, 3, 4, 5)).examine().findings().stream()
            .filter(finding -> finding.severity().compareTo(Severity.LIKELY) <= 0)
            .map(finding -> finding.ruleId() + " " + finding.location().field())
            .toList());
  }

  @Test
  void aFieldOfThousandsOfSegmentsIsReadToALimit() {
    List<List<String>> many = new ArrayList<>();
    for (int i = 0; i < 20_000; i++) {
      many.add(box(2, 0, 8, 0, 20));
    }
    assertEquals(99, count(right(many), "RP-TXN-020"));
  }

  private static SampleCard thumbs(int... fingers) {
    return SampleCard.rolledTagged()
        .plus(SampleCard.taggedPrint(15, 15, 0).with(21, boxes(fingers)));
  }

  @Test
  void theLeftThumbLiesOnTheLeft() {
    assertEquals(List.of(), found(thumbs(6, 1), "RP-TXN-019", "RP-TXN-021", "RP-TXN-023"));
    assertEquals(
        List.of(
            "RP-TXN-023 record 17 field 14.021 subfield 1 position 1:"
                + " from left: 1, 6; from left: 6, 1"),
        found(thumbs(1, 6), "RP-TXN-019", "RP-TXN-021", "RP-TXN-023"));
  }

  @Test
  void fingersOfTwoHandsHaveNoOrder() {
    for (int[] fingers : new int[][] {{2, 7}, {7, 2}}) {
      SampleCard card =
          SampleCard.rolledTagged()
              .plus(SampleCard.taggedPrint(15, 46, 0).with(21, boxes(fingers)));
      assertEquals(List.of(), found(card, "RP-TXN-019", "RP-TXN-021", "RP-TXN-023"));
    }
  }

  @Test
  void aSegmentOfNoFingerIsTheLayoutsToReport() {
    List<List<String>> boxes = new ArrayList<>(boxes(2, 3, 4, 5));
    boxes.add(List.of("", "0", "8", "2", "24"));
    assertEquals(
        List.of(),
        found(right(boxes), "RP-TXN-019", "RP-TXN-020", "RP-TXN-021", "RP-TXN-022", "RP-TXN-023"));
  }
}
