package ridgeproof.examination.rules.consistency;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static ridgeproof.examination.SampleRecords.found;
import static ridgeproof.examination.SampleRecords.reports;
import static ridgeproof.examination.SampleRecords.standardFeatures;
import static ridgeproof.examination.SampleRecords.tagged;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ridgeproof.examination.SampleCard;
import ridgeproof.examination.SampleRecords;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.transaction.writer.FieldDraft;
import ridgeproof.transaction.writer.RecordDraft;

class RecordLinkRuleTest {

  @ParameterizedTest
  @ValueSource(strings = {"RP-TXN-011", "RP-TXN-012", "RP-TXN-013", "RP-TXN-014", "RP-TXN-015"})
  void aCardWhoseFeaturesHaveTheIdcOfTheirImageIsNotReported(String rule) {
    assertFalse(reports(SampleCard.rolled().plus(standardFeatures(3, 3)), rule));
    assertFalse(reports(SampleCard.rolledTagged().plus(standardFeatures(3, 3)), rule));
  }

  @Test
  void featuresWithAnIdcThatNoImageHasAreReported() {
    SampleCard card = SampleCard.rolled().plus(standardFeatures(77, 3));
    assertTrue(reports(card, "RP-TXN-012"));
    assertFalse(reports(card, "RP-TXN-011"));
  }

  @Test
  void featuresInAFileWithoutImagesAreOnlyNoted() {
    SampleCard card = SampleCard.rolled().plus(standardFeatures(1, 3)).withoutPrints();
    assertTrue(reports(card, "RP-TXN-011"));
    assertFalse(reports(card, "RP-TXN-012"));
  }

  @Test
  void oneIdcForDifferentFingersInDifferentRecordTypesIsReported() {
    SampleCard card = SampleCard.rolled().plus(SampleCard.taggedPrint(3, 4, 1));
    assertTrue(reports(card, "RP-TXN-013"));
  }

  @Test
  void oneIdcForOneFingerInDifferentRecordTypesIsNotReported() {
    assertFalse(reports(SampleCard.rolled().plus(SampleCard.taggedPrint(3, 3, 1)), "RP-TXN-013"));
    assertFalse(reports(SampleCard.rolled().plus(SampleCard.taggedPrint(3, 13, 0)), "RP-TXN-013"));
    assertFalse(reports(SampleCard.rolled().plus(SampleCard.taggedPrint(3, 0, 1)), "RP-TXN-013"));
  }

  @Test
  void theOnlyTypeTwoRecordHasIdcZero() {
    SampleCard card = SampleCard.rolled().with(2, record -> record.with(2, "20"));
    assertTrue(reports(card, "RP-TXN-014"));
  }

  @Test
  void aReferenceToARecordOfTheFileIsNotReported() {
    assertFalse(reports(tagged(3, record -> record.with(992, "0")), "RP-TXN-015"));
  }

  @Test
  void eachReferenceToARecordThatIsNotThereIsReported() {
    assertTrue(reports(tagged(3, record -> record.with(992, "7")), "RP-TXN-015"));
    assertEquals(
        2,
        SampleRecords.count(
            tagged(3, record -> record.with(995, List.of(List.of("1"), List.of("2")))),
            "RP-TXN-015"));
  }

  /** A photograph, which is an image, but not one that features describe. */
  private static RecordDraft photograph(String idc) {
    return RecordDraft.tagged(
        10,
        List.of(
            SampleCard.text(10, 1, ""),
            SampleCard.text(10, 2, idc),
            SampleCard.text(10, 3, "FACE"),
            FieldDraft.data(new FieldNumber(10, 999), SampleCard.pixels(9))));
  }

  @Test
  void aPhotographIsNotWhatFeaturesDescribe() {
    SampleCard card = SampleCard.rolled().plus(photograph("15")).plus(standardFeatures(15, 3));
    assertEquals(
        List.of("RP-TXN-012 record 18: IDC 15; the IDC of an image record"),
        found(card, "RP-TXN-011", "RP-TXN-012"));
    card = card.withoutPrints();
    assertEquals(
        List.of("RP-TXN-011 record 4: IDC 15; the IDC of an image record"),
        found(card, "RP-TXN-011", "RP-TXN-012"));
  }
}
