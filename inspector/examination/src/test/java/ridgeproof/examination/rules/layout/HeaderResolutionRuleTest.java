package ridgeproof.examination.rules.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static ridgeproof.examination.SampleRecords.count;
import static ridgeproof.examination.SampleRecords.reports;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import ridgeproof.examination.SampleCard;
import ridgeproof.examination.SampleRecords;

class HeaderResolutionRuleTest {

  private static SampleCard card(String scanned, String sent) {
    return SampleCard.rolled().with(1, header -> header.with(11, scanned).with(12, sent));
  }

  @ParameterizedTest
  @ValueSource(strings = {"RP-TXN-016", "RP-TXN-017", "RP-TXN-018"})
  void equalResolutionsAreNotReported(String rule) {
    assertFalse(reports(SampleCard.rolled(), rule));
    assertFalse(reports(SampleCard.rolledTagged(), rule));
    assertFalse(reports(card("19.69", "19.70"), rule));
    assertFalse(reports(card("39.37", "19.69"), rule));
    assertFalse(reports(SampleCard.rolled().withField(3, SampleRecords.isr(1)), rule));
  }

  @Test
  void imagesThatAreSentFinerThanScannedAreReported() {
    assertEquals(1, count(card("19.69", "39.37"), "RP-TXN-016"));
  }

  @ParameterizedTest
  @CsvSource({"09.84, 09.84", "19.00, 19.00", "10.00, 19.69"})
  void aScanBelow500PpiIsReported(String scanned, String sent) {
    assertEquals(1, count(card(scanned, sent), "RP-TXN-017"));
  }

  @Test
  void theRoundingOfAFieldIsNoShortfall() {
    assertFalse(reports(card("19.68", "19.68"), "RP-TXN-017"));
    assertFalse(reports(card("19.60", "19.60"), "RP-TXN-017"));
  }

  @Test
  void recordsThatClaimAnotherResolutionThanIsSentAreReportedOnce() {
    SampleCard card =
        card("39.37", "19.69")
            .withField(3, SampleRecords.isr(1))
            .withField(4, SampleRecords.isr(1));
    assertTrue(reports(card, "RP-TXN-018"));
    assertEquals(1, count(card, "RP-TXN-018"));
  }

  @Test
  void theResolutionAsSentIsHeldAgainstTheClassesOfTheRecordType() {
    assertTrue(reports(card("19.69", "09.84"), "RP-IMG-008"));
    assertFalse(reports(card("19.69", "09.84"), "RP-TXN-017"));
  }

  @Test
  void aFileWithoutImagesThatTheHeaderScalesHasNoLeastResolution() {
    SampleCard tagged =
        SampleCard.rolledTagged().with(1, header -> header.with(11, "09.84").with(12, "09.84"));
    assertFalse(reports(tagged, "RP-TXN-017"));
  }

  @Test
  void twoResolutionsThatLieApartByTheWholeToleranceAgree() {
    assertFalse(reports(card("10.00", "10.10"), "RP-TXN-016"));
    assertTrue(reports(card("10.00", "10.11"), "RP-TXN-016"));
    for (SampleCard card : List.of(card("10.00", "10.10"), card("10.10", "10.00"))) {
      assertFalse(reports(card.withField(3, SampleRecords.isr(1)), "RP-TXN-018"));
    }
    for (SampleCard card : List.of(card("10.00", "10.11"), card("10.11", "10.00"))) {
      assertTrue(reports(card.withField(3, SampleRecords.isr(1)), "RP-TXN-018"));
    }
  }

  @Test
  void field5OfATaggedPrintIsNoIsr() {
    SampleCard card = card("39.37", "19.69").plus(SampleCard.taggedPrint(15, 15, 0).with(5, "1"));
    assertFalse(reports(card, "RP-TXN-018"));
  }
}
