package ridgeproof.examination.safecopy;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import ridgeproof.transaction.record.ByteRange;
import ridgeproof.transaction.record.ByteSource;

class UnparsedBytesTest {

  private static byte[] latin(String text) {
    return text.getBytes(StandardCharsets.ISO_8859_1);
  }

  private static String copied(String text, ByteRange... ranges) {
    byte[] out = new byte[text.length()];
    Arrays.fill(out, (byte) '?');
    UnparsedBytes.copy(ByteSource.of(latin(text)), List.of(ranges), out);
    return new String(out, StandardCharsets.ISO_8859_1);
  }

  private static String copied(String text) {
    return copied(text, new ByteRange(0, text.length()));
  }

  private static ByteSource value(String text) {
    return ByteSource.of(latin(text));
  }

  @Test
  void textKeepsTheKindOfItsCharactersAndTheirSeparators() {
    assertEquals(
        "XXX xxx 000\t\r\n\u001c\u001d\u001e\u001f,~",
        copied("AMZ amz 059\t\r\n\u001c\u001d\u001e\u001f,~"));
  }

  @Test
  void charactersBesideLettersAndDigitsStay() {
    assertEquals("/0:@X[`x{", copied("/7:@Q[`q{"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"ADA\u007f", "ADA\u0000", "ADA\u001b", "ADA\u0080", "\u00ff"})
  void whatMayBeAPartOfAnImageKeepsNothing(String bytes) {
    assertEquals("?".repeat(bytes.length()), copied(bytes));
  }

  @Test
  void onlyTheRangesAreCopied() {
    assertEquals("?XX??00?", copied("AADAA12A", new ByteRange(1, 2), new ByteRange(5, 2)));
  }

  @Test
  void oneRangeThatIsNoTextMakesAllOfThemNone() {
    assertEquals(
        "????????", copied("AADA\u0001\u000212", new ByteRange(0, 4), new ByteRange(4, 2)));
  }

  @Test
  void rangesCountFromTheBeginningOfTheFile() {
    byte[] out = new byte[8];
    UnparsedBytes.copy(ByteSource.of(latin("zAb1"), 3), List.of(new ByteRange(4, 3)), out);
    assertEquals("\0\0\0\0Xx0\0", new String(out, StandardCharsets.ISO_8859_1));
  }

  @ParameterizedTest
  @CsvSource({
    "'ADA', true",
    "'', true",
    "'\u0001\u0002', true",
    "'\u0001\u0002\u0003', false",
    "'\t\n\r\u001c\u001d\u001e\u001f ~', true",
    "'\u001b\u001b\u001b', false",
    "'\u007f\u007f\u007f', false",
    "'\u0080\u00ff', true",
    "'\u0080\u00ff\u00ff', false",
    "'AAAAAAAAA\u00e9\u00e9\u00e9', true",
    "'AAAAAAAA\u00e9\u00e9\u00e9', false",
    "'\u00c3\u00a9\u00c3\u00a9', true"
  })
  void aValueIsTextThatHasFewBytesOfNoText(String text, boolean isText) {
    assertEquals(isText, UnparsedBytes.isText(value(text)));
  }

  @ParameterizedTest
  @CsvSource({
    "'AD\u0001A\u0002', '??\u0001??'",
    "'\u0080\u0081AD', '\u0080???'",
    "'ADA\u00ff', '???\u00ff'",
    "'AD\u007fA', '??\u007f?'",
    "'A\t\u001d', '???'"
  })
  void ofAValueThatIsNoTextTheFirstSuchByteStaysAlone(String text, String kept) {
    byte[] out = latin("?".repeat(text.length()));
    UnparsedBytes.copyFirstOdd(value(text), out);
    assertEquals(kept, new String(out, StandardCharsets.ISO_8859_1));
  }

  @Test
  void thatByteStaysAtItsPlaceInTheFile() {
    byte[] out = latin("??????");
    UnparsedBytes.copyFirstOdd(ByteSource.of(latin("A\u0001A"), 3), out);
    assertEquals("????\u0001?", new String(out, StandardCharsets.ISO_8859_1));
  }

  @Test
  void whatIsNoTextIsSeenWhereItStandsInTheFile() {
    byte[] out = latin("????????");
    UnparsedBytes.copy(ByteSource.of(latin("z\u0001b1"), 3), List.of(new ByteRange(4, 3)), out);
    assertEquals("????????", new String(out, StandardCharsets.ISO_8859_1));
  }
}
