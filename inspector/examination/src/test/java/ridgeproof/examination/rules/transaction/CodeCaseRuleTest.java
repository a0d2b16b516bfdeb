package ridgeproof.examination.rules.transaction;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static ridgeproof.examination.SampleRecords.found;
import static ridgeproof.examination.SampleRecords.pixelFeatures;
import static ridgeproof.examination.SampleRecords.tagged;

import java.util.List;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.SampleCard;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.transaction.writer.FieldDraft;
import ridgeproof.transaction.writer.RecordDraft;

class CodeCaseRuleTest {

  private static final String RULE = "RP-FLD-035";
  private static final String REQUIRED = "; the same code in capital letters";

  private static SampleCard header(int field, String value) {
    return SampleCard.rolled().with(1, draft -> draft.with(field, value));
  }

  private static SampleCard particular(int field, String value) {
    return SampleCard.rolled().with(2, draft -> draft.with(field, value));
  }

  @Test
  void aCodeOfTheImageIsShownAndOneOfThePersonIsMasked() {
    assertEquals(
        List.of("RP-FLD-035 record 3 field 14.011 subfield 1 item 1: \"wsq20\"" + REQUIRED),
        found(tagged(3, draft -> draft.with(11, "wsq20")), RULE));
    assertEquals(
        List.of("RP-FLD-035 record 2 field 2.024 subfield 1 item 1: personal \"f\"" + REQUIRED),
        found(particular(24, "f"), RULE));
  }

  @Test
  void eachCodeAmongOtherItemsIsReportedInItsPlace() {
    SampleCard card =
        SampleCard.rolled()
            .with(2, draft -> draft.with(84, List.of(List.of("01", "XX"), List.of("02", "Up"))));
    assertEquals(
        List.of("RP-FLD-035 record 2 field 2.084 subfield 2 item 2: personal \"Up\"" + REQUIRED),
        found(card, RULE));
  }

  @Test
  void aTypeOfTransactionIsACode() {
    assertEquals(
        List.of("RP-FLD-035 record 1 field 1.004 subfield 1 item 1: \"fauf\"" + REQUIRED),
        found(header(4, "fauf"), RULE));
    assertEquals(List.of(), found(header(4, "fauq"), RULE));
  }

  @Test
  void smallLettersThatAreNoCodeAreNotReported() {
    assertEquals(List.of(), found(particular(24, "q"), RULE));
    assertEquals(List.of(), found(particular(37, "pilot licence"), RULE));
    assertEquals(List.of(), found(header(88, "xx"), RULE));
  }

  @Test
  void aCodeThatIsPublishedInSmallLettersIsRight() {
    assertEquals(List.of(), found(SampleCard.rolled().plus(distorted("Barrel")), RULE));
    assertEquals(List.of(), found(SampleCard.rolled().plus(distorted("barrel")), RULE));
  }

  @Test
  void whatMayBeWrittenEitherWayIsRight() {
    List<List<String>> quality = List.of(List.of("80", "00ab", "1"));
    SampleCard card = SampleCard.rolledTagged().plus(pixelFeatures(3, 3).with(135, quality));
    assertEquals(List.of(), found(card, RULE));
  }

  /** A photograph whose lens bends straight lines. */
  private static RecordDraft distorted(String distortion) {
    return RecordDraft.tagged(
        10,
        List.of(
            SampleCard.text(10, 1, ""),
            SampleCard.text(10, 2, "15"),
            FieldDraft.text(new FieldNumber(10, 18), List.of(List.of(distortion, "E", "Mild")))));
  }
}
