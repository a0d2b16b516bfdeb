package ridgeproof.examination;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static ridgeproof.examination.SampleRecords.count;
import static ridgeproof.examination.SampleRecords.pixelFeatures;
import static ridgeproof.examination.SampleRecords.reports;
import static ridgeproof.examination.SampleRecords.standardFeatures;

import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import ridgeproof.spec.rule.Severity;
import ridgeproof.transaction.writer.RecordDraft;

class FeatureRulesTest {

  private static SampleCard standard(UnaryOperator<RecordDraft> change) {
    return SampleCard.rolled().plus(change.apply(standardFeatures(3, 3)));
  }

  private static SampleCard pixels(UnaryOperator<RecordDraft> change) {
    return SampleCard.rolledTagged().plus(change.apply(pixelFeatures(3, 3)));
  }

  private static List<String> minutia(int number, int x, int y) {
    return List.of(
        "%03d".formatted(number), Integer.toString(x), Integer.toString(y), "0", "1", "80");
  }

  @ParameterizedTest
  @ValueSource(strings = {"RP-TXN-027", "RP-TXN-028", "RP-TXN-029", "RP-TXN-030", "RP-TXN-031"})
  void featuresThatFitTheirImageAreNotReported(String rule) {
    assertFalse(reports(standard(record -> record), rule));
    assertFalse(reports(pixels(record -> record), rule));
    assertFalse(reports(SampleCard.rolledTagged().plus(standardFeatures(13, 4)), rule));
  }

  @Test
  void aCountThatDiffersFromTheListIsReported() {
    assertEquals(1, count(standard(record -> record.with(10, "3")), "RP-TXN-027"));
    assertEquals(1, count(pixels(record -> record.with(136, "1")), "RP-TXN-027"));
  }

  @Test
  void minutiaeOutsideTheImageAreReportedOnceForTheField() {
    List<List<String>> outside =
        List.of(
            List.of("001", "01690000000", "30", "A"),
            List.of("002", "00000129000", "30", "A"),
            List.of("003", "00100010000", "30", "A"));
    SampleCard card = standard(record -> record.with(10, "3").with(12, outside));
    assertEquals(1, count(card, "RP-TXN-028"));
    assertTrue(
        card.examine().findings().stream()
            .anyMatch(finding -> finding.observed().text().contains("2 of 3 outside")));
  }

  @ParameterizedTest
  @CsvSource({"8, 02000060", "9, 00800200"})
  void aCoreOrDeltaOutsideTheImageIsReported(int field, String place) {
    assertTrue(reports(standard(record -> record.with(field, place)), "RP-TXN-028"));
  }

  @ParameterizedTest
  @CsvSource({"33, 0", "0, 25"})
  void minutiaeOutsideTheStatedPixelsAreReported(int x, int y) {
    assertTrue(
        reports(
            pixels(record -> record.with(137, List.of(minutia(1, 0, 0), minutia(2, x, y)))),
            "RP-TXN-028"));
  }

  @Test
  void pixelsAreHeldAgainstTheImageWhereTheRecordStatesNoSize() {
    assertTrue(
        reports(
            pixels(
                record ->
                    record
                        .without(128)
                        .without(129)
                        .with(137, List.of(minutia(1, 0, 0), minutia(2, 40, 1)))),
            "RP-TXN-028"));
  }

  @Test
  void extendedFeaturesAreHeldAgainstTheRegionOfInterest() {
    UnaryOperator<RecordDraft> region =
        record ->
            record
                .with(300, List.of(List.of("100", "100")))
                .with(331, List.of(List.of("90", "110", "0", "E")));
    assertTrue(reports(pixels(region), "RP-TXN-028"));
    assertFalse(
        reports(
            pixels(
                record -> region.apply(record).with(331, List.of(List.of("90", "100", "0", "E")))),
            "RP-TXN-028"));
  }

  @Test
  void featuresWithoutAnImageAreNotMeasured() {
    SampleCard card = SampleCard.rolled().plus(standardFeatures(77, 3).with(8, "99999999"));
    assertFalse(reports(card, "RP-TXN-028"));
  }

  @Test
  void minutiaeThatAreNotNumberedFromOneAreReportedOnce() {
    assertEquals(
        1,
        count(
            pixels(record -> record.with(137, List.of(minutia(2, 0, 0), minutia(3, 1, 1)))),
            "RP-TXN-029"));
  }

  @Test
  void featuresOfAnotherFingerThanTheImageAreReported() {
    assertTrue(reports(SampleCard.rolled().plus(standardFeatures(3, 4)), "RP-TXN-030"));
    assertTrue(reports(SampleCard.rolledTagged().plus(pixelFeatures(13, 8)), "RP-TXN-030"));
  }

  @Test
  void featuresOfAnUnknownFingerFitAnyImage() {
    assertFalse(reports(SampleCard.rolled().plus(standardFeatures(3, 0)), "RP-TXN-030"));
  }

  @Test
  void aStatedSizeThatDiffersFromTheImageIsReported() {
    assertTrue(reports(pixels(record -> record.with(128, "48")), "RP-TXN-031"));
    assertTrue(reports(pixels(record -> record.with(131, "1000").with(132, "1000")), "RP-TXN-031"));
  }

  @Test
  void aCopyAtAnotherResolutionHasTheSameSize() {
    assertFalse(
        reports(
            pixels(
                record ->
                    record.with(128, "64").with(129, "48").with(131, "1000").with(132, "1000")),
            "RP-TXN-031"));
    assertFalse(
        reports(
            pixels(record -> record.with(130, "2").with(131, "197").with(132, "197")),
            "RP-TXN-031"));
  }

  @Test
  void theSamplesOfFeaturesConform() {
    for (SampleCard card : List.of(standard(record -> record), pixels(record -> record))) {
      assertEquals(
          List.of(),
          card.examine().findings().stream()
              .filter(finding -> finding.severity().compareTo(Severity.LIKELY) <= 0)
              .map(finding -> finding.ruleId() + " " + finding.location().field())
              .toList());
    }
  }
}
