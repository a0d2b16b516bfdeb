package ridgeproof.examination.message;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.rule.BureauMessage;
import ridgeproof.spec.table.Source.Knowledge;

class BureauMessagesTest {

  private final BureauMessages messages = new BureauMessages(SpecTables.open());

  @Test
  void aCodeIsExplainedWhateverItsCaseAndTheTextAroundIt() {
    for (String text : List.of("L0008", "l0008", "Error L0008: see the manual")) {
      Explanation explanation = messages.explain(text);
      assertEquals(List.of("Print quality is too low"), titles(explanation.byCode()), text);
      assertEquals(Knowledge.PUBLISHED, explanation.byCode().get(0).source().known());
      assertTrue(explanation.rules().contains("RP-RDG-004"));
    }
  }

  @Test
  void aTextWithoutACodeIsFoundByItsWords() {
    assertEquals(
        "Print quality is too low",
        first("The quality of the characteristics is too low to be used"));
    assertEquals("Fingers are in the wrong boxes", first("Sequence error: hands swapped"));
    assertEquals("Transaction was sent before", first("Duplicate TCN"));
    assertEquals("Date of birth is not valid", first("DOB"));
    assertEquals("Image cannot be decoded", first("WSQ decompression error in record 5"));
    assertEquals("Agency identifier is not known", first("Invalid ORI"));
  }

  @Test
  void theWordsBesideACodeSayMore() {
    Explanation explanation = messages.explain("E0002 date of birth (2.022) failed validation");
    assertEquals(List.of("Value is not valid"), titles(explanation.byCode()));
    assertEquals("Date of birth is not valid", explanation.byWords().get(0).title());
    assertEquals(List.of(new FieldNumber(2, 22)), explanation.fields());
  }

  @Test
  void aCodeThatIsNotListedIsSaidToBeOne() {
    Explanation explanation = messages.explain("E0815");
    assertEquals(List.of("E0815"), explanation.unlistedCodes());
    assertEquals(List.of("A value in the file"), titles(explanation.families()));
    assertEquals(Knowledge.FROM_MEMORY, explanation.families().get(0).source().known());
  }

  @Test
  void nothingIsMadeUpForWordsThatNothingIsKnownOf() {
    assertFalse(messages.explain("Come back on Tuesday").isKnown());
    assertFalse(messages.explain("").isKnown());
    assertFalse(messages.explain("Z0001").isKnown());
  }

  private String first(String text) {
    return messages.explain(text).byWords().get(0).title();
  }

  private static List<String> titles(List<BureauMessage> found) {
    return found.stream().map(BureauMessage::title).toList();
  }
}
