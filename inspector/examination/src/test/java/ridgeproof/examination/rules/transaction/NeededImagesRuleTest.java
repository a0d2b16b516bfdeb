package ridgeproof.examination.rules.transaction;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static ridgeproof.examination.SampleRecords.found;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ridgeproof.examination.SampleCard;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.transaction.writer.FieldDraft;
import ridgeproof.transaction.writer.RecordDraft;

class NeededImagesRuleTest {

  private static final String[] RULES = {
    "RP-TXN-007", "RP-TXN-044", "RP-TXN-045", "RP-TXN-046", "RP-TXN-047", "RP-TXN-051"
  };

  private static RecordDraft tagged(int type, int impressionField, String impression) {
    return RecordDraft.tagged(
        type,
        List.of(
            SampleCard.text(type, 1, ""),
            SampleCard.text(type, 2, "15"),
            SampleCard.text(type, impressionField, impression),
            FieldDraft.data(new FieldNumber(type, 999), SampleCard.pixels(9))));
  }

  @ParameterizedTest
  @CsvSource({
    "FIS, RP-TXN-044: none; at least one image",
    "RPIS, RP-TXN-044: none; at least one print",
    "CFS, RP-TXN-045: none; at least one print",
    "LFS, RP-TXN-044: none; at least one latent print",
    "ELR, RP-TXN-045: none; at least one latent print",
    "QQQ, RP-TXN-007: no image record; images",
    "IIDS, RP-TXN-051: no published list says which records IIDS needs;"
        + " a list of what this type of transaction needs"
  })
  void aFileWithoutImageLacksWhatItsTypeIsAbout(String type, String finding) {
    assertEquals(List.of(finding), found(SampleCard.ofType(type), RULES));
  }

  @ParameterizedTest
  @CsvSource({"FIS", "RPIS", "CFS", "QQQ"})
  void onePrintIsEnoughWhereNoSetIsNeeded(String type) {
    assertEquals(
        List.of(), found(SampleCard.ofType(type).plus(SampleCard.taggedPrint(2, 2, 1)), RULES));
  }

  @Test
  void aPhotographIsAnImageAndNoPrint() {
    RecordDraft photograph = tagged(10, 3, "FACE");
    assertEquals(List.of(), found(SampleCard.ofType("FIS").plus(photograph), RULES));
    assertEquals(
        List.of("RP-TXN-044: none; at least one print"),
        found(SampleCard.ofType("RPIS").plus(photograph), RULES));
    assertEquals(
        List.of("RP-TXN-044: none; at least one latent print"),
        found(SampleCard.ofType("LFS").plus(photograph), RULES));
  }

  @Test
  void aLatentIsKnownByItsImpressionOrItsRecordType() {
    SampleCard card = SampleCard.ofType("LFS");
    assertEquals(List.of(), found(card.plus(SampleCard.taggedPrint(1, 0, 4)), RULES));
    assertEquals(List.of(), found(card.plus(tagged(13, 3, "0")), RULES));
    assertEquals(
        List.of("RP-TXN-046: 1 print, not latent; at least one latent print"),
        found(card.plus(SampleCard.taggedPrint(1, 1, 1)), RULES));
    assertEquals(
        List.of("RP-TXN-046: 2 prints, none latent; at least one latent print"),
        found(
            card.plus(SampleCard.taggedPrint(1, 1, 1)).plus(SampleCard.taggedPrint(2, 2, 1)),
            RULES));
  }

  @Test
  void aQueryWithPrintsIsNoted() {
    SampleCard one = SampleCard.ofType("IRQ").plus(SampleCard.taggedPrint(1, 1, 1));
    assertEquals(List.of("RP-TXN-047: IRQ with 1 print image; no prints"), found(one, RULES));
    assertEquals(
        List.of("RP-TXN-047: IRQ with 2 print images; no prints"),
        found(one.plus(SampleCard.taggedPrint(2, 2, 1)), RULES));
    assertEquals(List.of(), found(SampleCard.ofType("IRQ").plus(tagged(10, 3, "FACE")), RULES));
  }
}
