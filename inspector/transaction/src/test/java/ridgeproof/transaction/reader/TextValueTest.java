package ridgeproof.transaction.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static ridgeproof.transaction.reader.RawTransaction.RS;
import static ridgeproof.transaction.reader.RawTransaction.US;
import static ridgeproof.transaction.reader.RawTransaction.findings;
import static ridgeproof.transaction.reader.RawTransaction.header;
import static ridgeproof.transaction.reader.RawTransaction.read;
import static ridgeproof.transaction.reader.RawTransaction.tagged;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import ridgeproof.transaction.record.Field;

class TextValueTest {

  private static final String HEADER = header("2 00");

  /** Where the value begins. */
  private static final int VALUE = HEADER.length() + 24;

  private static String with(String value) {
    return HEADER + tagged(2, "2.002:00", "2.018:" + value);
  }

  /**
   * A file of the character set, whose value begins at the end of what is returned less 18 bytes.
   */
  private static String declaring(String set, String value) {
    return tagged(1, "1.002:0500", "1.003:1" + US + "1" + RS + "2" + US + "00", "1.015:" + set)
        + tagged(2, "2.002:00", "2.018:" + value);
  }

  private static List<String> places(Field field) {
    return field.subfields().stream()
        .map(
            subfield ->
                subfield.range().offset()
                    - VALUE
                    + "+"
                    + subfield.range().length()
                    + subfield.items().stream()
                        .map(
                            item ->
                                item.text()
                                    + " "
                                    + (item.range().offset() - VALUE)
                                    + "+"
                                    + item.range().length())
                        .toList())
        .toList();
  }

  @Test
  void subfieldsAndItemsAreReadWithTheirPlaces() {
    String file = with("AB" + US + "C" + RS + US + "DEF" + RS + "G");
    assertEquals(
        List.of("0+4[AB 0+2, C 3+1]", "5+4[ 5+0, DEF 6+3]", "10+1[G 10+1]"),
        places(read(file).records().get(1).field(18).orElseThrow()));
    assertEquals(List.of(), findings(file));
  }

  @Test
  void anEmptyValueIsOneEmptyItem() {
    assertEquals(
        List.of("0+0[ 0+0]"), places(read(with("")).records().get(1).field(18).orElseThrow()));
  }

  @Test
  void theFirstByteThatIsNoCharacterIsReportedAndNoOther() {
    assertEquals(
        List.of(
            "RP-STR-019 record 2 field 2.018 at "
                + (VALUE + 1)
                + "+1: byte 0x01 | 7-bit ASCII characters"),
        findings(with("A\u0001B\u0002C\u00C9")));
  }

  @ParameterizedTest
  @CsvSource({
    "0, 00", "8, 08", "11, 0B", "12, 0C", "14, 0E", "27, 1B", "127, 7F", "128, 80", "255, FF"
  })
  void aByteThatIsNoCharacterIsReported(int value, String digits) {
    assertEquals(
        List.of(
            "RP-STR-019 record 2 field 2.018 at "
                + (VALUE + 1)
                + "+1: byte 0x"
                + digits
                + " | 7-bit ASCII characters"),
        findings(with("A" + (char) value)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"\t", "\n", "\r", " ", "~"})
  void blanksAndLineEndsAreCharacters(String value) {
    assertEquals(List.of(), findings(with("A" + value + "B")));
  }

  @Test
  void aByteOutsideTheSetIsReportedInTheItemThatHasIt() {
    assertEquals(
        List.of(
            "RP-STR-019 record 2 field 2.018 at "
                + (VALUE + 5)
                + "+1: byte 0xC9 | 7-bit ASCII characters"),
        findings(with("AB" + US + "CD\u00C9\u00CA")));
  }

  @Test
  void eightBitCharactersAreReadWhereTheyAreDeclared() {
    String file = declaring("001", "AD\u00C9LE");
    assertEquals(List.of(), findings(file));
    assertEquals("AD\u00C9LE", read(file).records().get(1).text(18).orElseThrow());
    assertEquals(
        List.of(
            "RP-STR-019 record 2 field 2.018 at "
                + file.indexOf("\u00C9")
                + "+1: byte 0x02 | ISO-8859-1 characters"),
        findings(file.replace("\u00C9", "\u0002")));
  }

  @Test
  void bytesThatAreNoUtf8AreReportedAtTheFirstThatIsNotAscii() {
    String file = declaring("003", "AD\u00C9LE");
    assertEquals(
        List.of(
            "RP-STR-019 record 2 field 2.018 at "
                + file.indexOf("\u00C9")
                + "+1: byte 0xC9 | UTF-8 characters"),
        findings(file));
    assertEquals("AD\u00C9LE", read(file).records().get(1).text(18).orElseThrow());
  }
}
