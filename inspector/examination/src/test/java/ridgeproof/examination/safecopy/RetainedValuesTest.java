package ridgeproof.examination.safecopy;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ridgeproof.examination.SampleCard;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.layout.RecordTypeRow.Encoding;
import ridgeproof.transaction.record.ByteRange;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.record.LogicalRecord;

class RetainedValuesTest {

  private static final RetainedValues KEPT = new RetainedValues(SampleCard.TABLES, 500);

  private static LogicalRecord record(int type) {
    return new LogicalRecord(
        2,
        type,
        Encoding.TAGGED,
        OptionalInt.of(0),
        new ByteRange(0, 0),
        List.of(),
        List.of(),
        ByteSource.of(new byte[0]));
  }

  private static boolean keeps(String field, int item, String text) {
    FieldNumber number = FieldNumber.parse(field);
    return KEPT.keeps(record(number.recordType()), number, item, text);
  }

  @ParameterizedTest
  @CsvSource({
    "14.001, 123456789, true",
    "14.001, 1234567890, false",
    "14.001, '', false",
    "14.001, ADA, false",
    "14.002, 07, true",
    "14.002, ADA, false",
    "77.001, 12, true",
    "77.002, 12, true",
    "77.003, 12, false"
  })
  void aLengthAndAnIdcStayIfTheyAreNumbers(String field, String text, boolean kept) {
    assertEquals(kept, keeps(field, 1, text));
  }

  @Test
  void theyAreThoseOfTheRecordItself() {
    FieldNumber ofAnother = new FieldNumber(77, 1);
    assertEquals(false, KEPT.keeps(record(14), ofAnother, 1, "12"));
  }

  @ParameterizedTest
  @CsvSource({
    "2.018, 1, 'SPECIMEN,ADA'",
    "2.018, 1, ADA",
    "2.016, 1, 507218344",
    "2.022, 1, 19900214",
    "2.024, 1, F",
    "2.031, 1, BRO",
    "1.009, 1, PILOT",
    "1.005, 1, 20260302",
    "14.005, 1, 20260302",
    "14.004, 1, PIER",
    "9.012, 2, 00100010",
    "2.100, 1, ADA",
    "77.003, 1, ADA"
  })
  void whatTellsOfAPersonDoesNotStay(String field, int item, String text) {
    assertEquals(false, keeps(field, item, text));
  }

  @ParameterizedTest
  @CsvSource({
    "14.006, 000000000800, true",
    "14.006, 0000000000800, false",
    "14.011, NONE, true",
    "14.011, ABCDE, true",
    "14.011, A.+-9, true",
    "14.011, ABCDEF, false",
    "14.011, ada, false",
    "14.011, A B, false",
    "2.005, Y, true",
    "1.004, FAUF, true",
    "1.004, ABCDE, true",
    "1.004, ABCDEF, false",
    "1.004, A1, false"
  })
  void aHarmlessFieldKeepsItsCodesAndWhatIsTooShortToSayMuch(
      String field, String text, boolean kept) {
    assertEquals(kept, keeps(field, 1, text));
  }

  @ParameterizedTest
  @CsvSource({
    "1, NORAM, true",
    "1, ADA, false",
    "2, 1.0, true",
    "2, 1, true",
    "2, ADA, false",
    "2, 1.00000, false",
    "3, 1.0, false"
  })
  void eachItemHasWhatItMayBe(int item, String text, boolean kept) {
    assertEquals(kept, keeps("1.013", item, text));
  }

  @Test
  void aNumberThatAVersionLeavesToUsersMayHoldAnything() {
    LogicalRecord record = record(10);
    FieldNumber linked = new FieldNumber(10, 992);
    assertEquals(
        List.of(false, true),
        List.of(400, 501).stream()
            .map(
                version ->
                    new RetainedValues(SampleCard.TABLES, version).keeps(record, linked, 1, "1"))
            .toList());
  }

  @ParameterizedTest
  @CsvSource({
    "4.003, true",
    "4.006, true",
    "4.009, false",
    "8.004, true",
    "8.008, false",
    "77.003, false"
  })
  void aNumberOfABinaryRecordStaysIfItsFieldIsHarmless(String field, boolean kept) {
    assertEquals(kept, KEPT.keepsNumber(FieldNumber.parse(field)));
  }

  @Test
  void theRowOfAnItemIsItsOwnOrThatOfItsField() {
    assertEquals("Pattern classification", name("2.034", 2));
    assertEquals("Finger position", name("2.034", 1));
    assertEquals("Pattern level classifications", name("2.034", 9));
    assertEquals("Name", name("2.018", 1));
    assertEquals("", name("77.003", 1));
  }

  private static String name(String field, int item) {
    return KEPT.layoutRow(FieldNumber.parse(field), item).map(row -> row.name()).orElse("");
  }

  @Test
  void aCodeIsKnownIfTheVersionHasIt() {
    assertEquals(true, KEPT.knows("eye-colours", "BRO"));
    assertEquals(false, KEPT.knows("eye-colours", "QQQ"));
  }
}
