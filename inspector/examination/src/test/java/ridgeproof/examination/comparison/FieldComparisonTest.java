package ridgeproof.examination.comparison;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ridgeproof.examination.RuleExamples;
import ridgeproof.examination.SampleCard;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.writer.FieldDraft;
import ridgeproof.transaction.writer.RecordDraft;

/** Which field, subfield and item differs, and what it said before and after. */
class FieldComparisonTest {

  private static final SampleCard CARD = SampleCard.rolledTagged();

  /** Subfields are divided by a semicolon, items by a bar; empty text is no field. */
  private static SampleCard with(String text) {
    List<List<String>> subfields =
        Stream.of(text.split(";")).map(part -> Arrays.asList(part.split("\\|", -1))).toList();
    return text.isEmpty() ? CARD : CARD.with(2, draft -> draft.with(84, subfields));
  }

  @ParameterizedTest(name = "{0} and {1}")
  @CsvSource({
    "1|XX, 1|XX, ''",
    "1|XX, 1|UP, '2.084 0.2: XX -> UP (2)'",
    "1|XX, 2|XX, '2.084 0.1: 1 -> 2 (1)'",
    "1|XX, 1, '2.084 0.2: XX -> - (2)'",
    "1, 1|XX, '2.084 0.2: - -> XX (2)'",
    "1, 2, '2.084 0.0: 1 -> 2 (1)'",
    "1|XX, '', '2.084 0.0: 1 | XX -> - (2)'",
    "'', 1|XX;2|UP, '2.084 0.0: - -> 1 | XX || 2 | UP (2)'",
    "1|XX;2|UP, 1|XX;3|UP, '2.084 2.1: 2 -> 3 (1)'",
    "1|XX;2|UP, 3|XX;2|UP, '2.084 1.1: 1 -> 3 (1)'",
    "1|XX;2|UP, 1|XX;3|XX;2|UP, '2.084 2.0: - -> 3 | XX (2)'",
    "1|XX;3|XX;2|UP, 1|XX;2|UP, '2.084 2.0: 3 | XX -> - (2)'",
    "1|XX, 1|XX;1|XX, '2.084 2.0: - -> 1 | XX (2)'",
    "1|XX;1|XX, 1|XX, '2.084 2.0: 1 | XX -> - (2)'",
    "1|XX;2|XX;3|XX, 1|XX;3|XX, '2.084 2.0: 2 | XX -> - (2)'",
  })
  void theSmallestPartThatDiffersIsNamed(String first, String second, String difference) {
    TransactionComparison comparison = Compared.cards(with(first), with(second));
    assertEquals(
        difference.isEmpty() ? List.of() : List.of(difference), Compared.differences(comparison));
    assertEquals(difference.isEmpty(), comparison.same());
  }

  @Test
  void severalDifferencesAreListedByNumberAndItem() {
    SampleCard second =
        CARD.with(2, draft -> draft.with(20, "VA").with(31, "GRN").without(29))
            .with(4, draft -> draft.with(4, "TIDEWATER"));
    assertEquals(
        List.of(
            "2.020 0.0: MD -> VA (1)",
            "2.029 0.0: 150 -> - (1)",
            "2.031 0.0: BRO -> GRN (1)",
            "14.004 0.0: TIDEWATER PILOTS -> TIDEWATER (1)"),
        Compared.differences(Compared.cards(CARD, second)));
  }

  @Test
  void fieldsThatFollowFromExportDoNotCount() {
    SampleCard second =
        CARD.with(1, header -> header.with(9, "PILOT-0002").with(14, "20260302111500Z"));
    TransactionComparison comparison = Compared.cards(CARD, second);
    assertEquals(List.of(), Compared.differences(comparison));
    assertEquals(
        List.of(new FieldNumber(1, 9), new FieldNumber(1, 14)),
        comparison.pairs().get(0).differences().stream().map(ValueDifference::field).toList());
    assertTrue(comparison.same());
    assertFalse(comparison.sameBytes());
  }

  @Test
  void otherPixelsAreNoDifferenceOfAField() {
    TransactionComparison comparison =
        Compared.cards(CARD, CARD.with(3, draft -> RuleExamples.data(draft, new byte[768])));
    assertEquals(List.of(), Compared.differences(comparison));
    assertFalse(comparison.same());
  }

  private static SampleCard template(FieldDraft data) {
    return CARD.plus(
        RecordDraft.tagged(
            99, List.of(SampleCard.text(99, 1, ""), SampleCard.text(99, 2, "20"), data)));
  }

  private static FieldDraft bytes(int... values) {
    byte[] bytes = new byte[values.length];
    for (int i = 0; i < values.length; i++) {
      bytes[i] = (byte) values[i];
    }
    return FieldDraft.data(new FieldNumber(99, 999), ByteSource.of(bytes));
  }

  @Test
  void dataThatIsNoImageIsComparedByteForByte() {
    assertEquals(
        List.of(),
        Compared.differences(Compared.cards(template(bytes(1, 2)), template(bytes(1, 2)))));
    assertEquals(
        List.of("99.999 0.0: 2 bytes of data -> 3 other bytes of data (0)"),
        Compared.differences(Compared.cards(template(bytes(1, 2)), template(bytes(1, 2, 3)))));
  }

  @ParameterizedTest
  @CsvSource({
    "LEN, 1.001, true",
    "LEN, 14.001, true",
    "LEN, 14.002, false",
    "IDC, 14.002, true",
    "IDC, 1.002, false",
    "IDC, 14.001, false",
    "1.009, 1.009, true",
    "1.009, 1.010, false",
    "'', 1.001, false",
  })
  void lengthsAndNumbersAreIgnoredInEveryRecordAtOnce(
      String ignored, String field, boolean contained) {
    assertEquals(contained, IgnoredFields.parse(ignored).contains(FieldNumber.parse(field)));
  }

  @Test
  void whatIsIgnoredIsToldInOrder() {
    assertEquals(
        List.of("LEN", "IDC", "1.014", "2.022"),
        IgnoredFields.parse("2.022, IDC,1.014,LEN").names());
    assertEquals(List.of("1.014"), IgnoredFields.parse("1.014").names());
    assertEquals(List.of(), IgnoredFields.parse("").names());
  }
}
