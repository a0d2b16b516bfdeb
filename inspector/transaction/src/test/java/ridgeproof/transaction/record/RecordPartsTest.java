package ridgeproof.transaction.record;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.layout.RecordTypeRow.Encoding;
import ridgeproof.transaction.TransactionSamples;

class RecordPartsTest {

  @ParameterizedTest
  @CsvSource({"0, 0", "007, 7", "123456789, 123456789", "000000000, 0"})
  void aWholeNumberIsOneToNineDigits(String text, int value) {
    assertEquals(OptionalInt.of(value), WholeNumber.parse(text));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "1234567890", "-1", "+1", "1.0", " 1", "1 ", "/", ":", "\u0661", "1a"})
  void anythingElseIsNoWholeNumber(String text) {
    assertEquals(OptionalInt.empty(), WholeNumber.parse(text));
  }

  @Test
  void aRangeReachesFromItsOffsetToJustBeforeItsEnd() {
    ByteRange range = ByteRange.between(10, 15);
    assertEquals(new ByteRange(10, 5), range);
    assertEquals(15, range.end());
    assertFalse(range.contains(9));
    assertTrue(range.contains(10));
    assertTrue(range.contains(14));
    assertFalse(range.contains(15));
    assertEquals(0, new ByteRange(0, 0).end());
  }

  @Test
  void noRangeIsNegative() {
    assertThrows(IllegalArgumentException.class, () -> new ByteRange(-1, 0));
    assertThrows(IllegalArgumentException.class, () -> new ByteRange(0, -1));
  }

  @ParameterizedTest
  @CsvSource({
    "28, FS (0x1C)",
    "29, GS (0x1D)",
    "30, RS (0x1E)",
    "31, US (0x1F)",
    "10, 0x0A",
    "255, 0xFF"
  })
  void aSeparatorHasAName(int value, String name) {
    assertEquals(name, Separator.name(value));
  }

  @ParameterizedTest
  @EnumSource
  void asciiIsTheSameInEachEncoding(CharacterEncoding encoding) {
    byte[] bytes = TransactionSamples.ascii("SPECIMEN\u0000\u007F");
    assertTrue(encoding.admits(bytes));
    assertEquals("SPECIMEN\u0000\u007F", encoding.decode(bytes));
    assertArrayEquals(bytes, encoding.encode("SPECIMEN\u0000\u007F"));
  }

  @Test
  void otherBytesAreReadByTheEncodingThatIsDeclared() {
    byte[] one = {(byte) 0xC9};
    byte[] two = {(byte) 0xC3, (byte) 0x89};
    assertFalse(CharacterEncoding.ASCII.admits(one));
    assertTrue(CharacterEncoding.LATIN_1.admits(one));
    assertFalse(CharacterEncoding.UTF_8.admits(one));
    assertTrue(CharacterEncoding.UTF_8.admits(two));
    assertEquals("\u00C9", CharacterEncoding.ASCII.decode(one));
    assertEquals("\u00C9", CharacterEncoding.LATIN_1.decode(one));
    assertEquals("\u00C9", CharacterEncoding.UTF_8.decode(one));
    assertEquals("\u00C9", CharacterEncoding.UTF_8.decode(two));
    assertEquals("\u00C3\u0089", CharacterEncoding.LATIN_1.decode(two));
    assertArrayEquals(one, CharacterEncoding.ASCII.encode("\u00C9"));
    assertArrayEquals(one, CharacterEncoding.LATIN_1.encode("\u00C9"));
    assertArrayEquals(two, CharacterEncoding.UTF_8.encode("\u00C9"));
  }

  @Test
  void theCodesAreThoseOfField1015() {
    assertEquals("000", CharacterEncoding.ASCII.code());
    assertEquals("001", CharacterEncoding.LATIN_1.code());
    assertEquals("003", CharacterEncoding.UTF_8.code());
  }

  private static final ByteRange NONE = new ByteRange(100, 0);

  private static Field text(int type, int field, String... items) {
    List<Item> all = List.of(items).stream().map(item -> new Item(item, NONE)).toList();
    return new Field(
        new FieldNumber(type, field), "", NONE, NONE, List.of(new Subfield(all, NONE)));
  }

  private static LogicalRecord record(Field... fields) {
    return new LogicalRecord(
        3,
        14,
        Encoding.TAGGED,
        OptionalInt.of(1),
        new ByteRange(100, 10),
        List.of(fields),
        List.of(),
        ByteSource.of(TransactionSamples.ascii("..QUJD...."), 100));
  }

  @Test
  void aSubfieldIsEmptyBehindItsLastItem() {
    Subfield subfield = text(14, 3, "A", "B").subfields().get(0);
    assertEquals("A", subfield.text(1));
    assertEquals("B", subfield.text(2));
    assertEquals("", subfield.text(3));
  }

  @Test
  void theFirstFieldOfANumberAndOfTheRecordsTypeIsTaken() {
    LogicalRecord record =
        record(text(9, 3, "other"), text(14, 3, "7"), text(14, 3, "8"), text(14, 4, ""));
    assertEquals(Optional.of("7"), record.text(3));
    assertEquals(OptionalInt.of(7), record.number(3));
    assertEquals("7", record.field(new FieldNumber(14, 3)).orElseThrow().text());
    assertEquals(Optional.empty(), record.field(new FieldNumber(9, 3)));
    assertEquals(Optional.empty(), record.field(5));
    assertEquals(Optional.empty(), record.text(4));
    assertEquals(OptionalInt.empty(), record.number(4));
    assertEquals(OptionalInt.empty(), record(text(14, 3, "x")).number(3));
  }

  @Test
  void theImageIsTheFirstFieldWithoutItems() {
    FieldNumber number = new FieldNumber(14, 999);
    Field image = new Field(number, "", new ByteRange(101, 5), new ByteRange(102, 4), List.of());
    LogicalRecord record = record(text(14, 3, "7"), image);
    assertTrue(image.isData());
    assertFalse(record.fields().get(0).isData());
    assertEquals("", image.text());
    ByteSource data = record.data().orElseThrow();
    assertEquals("QUJD", data.latin1(0, 4));
    assertEquals(new ByteRange(102, 4), data.range());
    assertEquals(Optional.empty(), record(text(14, 3, "7")).data());
    Field coded = Field.inBase64(number, "", new ByteRange(101, 5), new ByteRange(102, 4), 3);
    assertEquals("ABC", record(coded).data().orElseThrow().latin1(0, 3));
    assertTrue(coded.isData());
  }

  @Test
  void aRecordAtAnotherPlaceOrOfAnotherIdcIsElseTheSame() {
    LogicalRecord record = record(text(14, 3, "7"));
    LogicalRecord moved = record.withOrdinal(5);
    assertEquals(5, moved.ordinal());
    assertEquals(record, moved.withOrdinal(3));
    LogicalRecord other = record.withIdc(OptionalInt.of(9));
    assertEquals(OptionalInt.of(9), other.idc());
    assertEquals(record, other.withIdc(OptionalInt.of(1)));
    assertEquals(Notation.TRADITIONAL, record.notation());
  }
}
