package ridgeproof.examination;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static ridgeproof.examination.SampleRecords.count;
import static ridgeproof.examination.SampleRecords.reports;
import static ridgeproof.examination.SampleRecords.tagged;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ImageRecordAgreementTest {

  private static SampleCard captured(String date) {
    return tagged(3, record -> record.with(5, date));
  }

  private static SampleCard compressed(String code, String ppi) {
    return tagged(3, record -> record.with(9, ppi).with(10, ppi).with(11, code));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "RP-TXN-032",
        "RP-TXN-033",
        "RP-TXN-034",
        "RP-IMG-012",
        "RP-IMG-023",
        "RP-IMG-024"
      })
  void theConformingCardIsNotReported(String rule) {
    assertFalse(reports(SampleCard.rolledTagged(), rule));
    assertFalse(reports(SampleCard.rolled(), rule));
  }

  @Test
  void descriptorsOfAnEntireJointImageAreReportedForAnotherPosition() {
    assertTrue(
        reports(tagged(3, record -> record.with(14, List.of(List.of("1", "EJI")))), "RP-TXN-032"));
    assertFalse(
        reports(
            tagged(3, record -> record.with(13, "19").with(14, List.of(List.of("1", "EJI")))),
            "RP-TXN-032"));
  }

  @ParameterizedTest
  @CsvSource({"20260303, 0", "20260304, 1", "20290101, 1"})
  void aCaptureLaterThanTheDayAfterTheTransactionIsReported(String date, int times) {
    assertEquals(times, count(captured(date), "RP-TXN-033"));
  }

  @ParameterizedTest
  @CsvSource({"19960302, 0", "19960301, 1", "19000101, 1"})
  void aCaptureMoreThanThirtyYearsAgoIsReported(String date, int times) {
    assertEquals(times, count(captured(date), "RP-TXN-034"));
  }

  @Test
  void aDateThatTheCalendarDoesNotHaveIsLeftToTheLayout() {
    assertFalse(reports(captured("20291301"), "RP-TXN-033"));
    assertTrue(reports(captured("20291301"), "RP-FLD-008"));
  }

  @ParameterizedTest
  @CsvSource({
    "WSQ20, 500, ''",
    "WSQ20, 1000, RP-IMG-012",
    "JP2, 500, RP-IMG-024",
    "JP2L, 500, RP-IMG-024",
    "JP2, 1000, ''",
    "JPEGB, 500, RP-IMG-023",
    "JPEGB, 1000, RP-IMG-023",
    "NONE, 500, ''",
    "PNG, 1000, ''"
  })
  void theCompressionBelongsToTheResolution(String code, String ppi, String expected) {
    List<String> found =
        compressed(code, ppi).examine().findings().stream()
            .map(finding -> finding.ruleId())
            .filter(rule -> rule.matches("RP-IMG-0(12|23|24)"))
            .toList();
    assertEquals(expected.isEmpty() ? List.of() : List.of(expected), found);
  }

  @Test
  void jpeg2000IsACodeOfALaterEditionThan0300AndNoInvention() {
    SampleCard card = compressed("JP2", "1000");
    assertFalse(reports(card, "RP-COD-002"));
    SampleCard older = card.with(1, header -> header.with(2, "0300"));
    assertTrue(reports(older, "RP-COD-002"));
    assertFalse(reports(older, "RP-COD-001"));
  }
}
