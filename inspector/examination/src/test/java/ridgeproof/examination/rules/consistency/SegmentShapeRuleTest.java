package ridgeproof.examination.rules.consistency;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static ridgeproof.examination.SampleRecords.RIGHT_SLAP;
import static ridgeproof.examination.SampleRecords.box;
import static ridgeproof.examination.SampleRecords.boxes;
import static ridgeproof.examination.SampleRecords.count;
import static ridgeproof.examination.SampleRecords.reports;
import static ridgeproof.examination.SampleRecords.tagged;
import static ridgeproof.examination.SampleRecords.texts;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ridgeproof.examination.SampleCard;

class SegmentShapeRuleTest {

  private static SampleCard slap(List<List<String>> segments) {
    return tagged(RIGHT_SLAP, record -> record.with(21, segments));
  }

  private static SampleCard polygon(int... numbers) {
    return tagged(RIGHT_SLAP, record -> record.with(25, List.of(texts(numbers))));
  }

  @ParameterizedTest
  @ValueSource(strings = {"RP-IMG-019", "RP-IMG-020", "RP-IMG-021", "RP-IMG-022"})
  void boxesAndPolygonsWithinTheImageAreNotReported(String rule) {
    assertFalse(reports(slap(boxes(2, 3, 4, 5)), rule));
    assertFalse(reports(polygon(2, 3, 0, 0, 8, 0, 8, 24), rule));
    assertFalse(
        reports(
            tagged(
                3,
                record ->
                    record
                        .with(13, "19")
                        .with(14, List.of(List.of("1", "EJI")))
                        .with(
                            15,
                            List.of(
                                List.of("FV1", "NA", "0", "32", "0", "24"),
                                List.of("FV1", "DST", "0", "31", "0", "12")))),
            rule));
  }

  @Test
  void aBoxBeyondTheRightOrLowerEdgeIsReported() {
    assertTrue(reports(slap(List.of(box(2, 0, 33, 0, 24))), "RP-IMG-019"));
    assertTrue(reports(slap(List.of(box(2, 0, 32, 0, 25))), "RP-IMG-019"));
    assertTrue(reports(polygon(2, 3, 0, 0, 40, 0, 8, 20), "RP-IMG-019"));
  }

  @Test
  void aPartOfAnEntireJointImageBeyondTheImageIsReported() {
    assertTrue(
        reports(
            tagged(
                3, record -> record.with(15, List.of(List.of("FV1", "NA", "0", "99", "0", "24")))),
            "RP-IMG-019"));
  }

  @Test
  void edgesThatAreExchangedOrEqualAreReported() {
    assertTrue(reports(slap(List.of(box(2, 9, 8, 0, 24))), "RP-IMG-020"));
    assertTrue(reports(slap(List.of(box(2, 0, 8, 24, 0))), "RP-IMG-020"));
    assertTrue(reports(slap(List.of(box(2, 8, 8, 0, 24))), "RP-IMG-020"));
    assertTrue(reports(polygon(2, 2, 0, 0, 8, 8), "RP-IMG-020"));
  }

  @Test
  void aBoxThatCoversMostOfItsNeighbourIsReportedOnce() {
    assertEquals(1, count(slap(List.of(box(2, 0, 16, 0, 20), box(3, 4, 12, 2, 18))), "RP-IMG-021"));
  }

  @Test
  void boxesThatCoverEachOtherALittleAreNotReported() {
    assertFalse(reports(slap(List.of(box(2, 0, 10, 0, 20), box(3, 8, 18, 0, 20))), "RP-IMG-021"));
  }

  @Test
  void aPolygonWithMoreOrFewerCornersThanStatedIsReported() {
    assertTrue(reports(polygon(2, 4, 0, 0, 8, 0, 8, 20), "RP-IMG-022"));
    assertTrue(reports(polygon(2, 3, 0, 0, 8, 0, 8, 20, 5), "RP-IMG-022"));
  }
}
