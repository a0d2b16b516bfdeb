package ridgeproof.transaction.record;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.ByteBuffer;
import java.nio.ReadOnlyBufferException;
import java.util.Base64;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ridgeproof.transaction.TransactionSamples;

class ByteSourceTest {

  private static final ByteSource DIGITS = source("0123456789");

  private static ByteSource source(String text) {
    return ByteSource.of(TransactionSamples.ascii(text));
  }

  private static String text(ByteSource source) {
    return TransactionSamples.text(source.toArray());
  }

  @Test
  void numbersAreUnsignedWithTheirFirstByteTheHighest() {
    ByteSource source = source("\u0000\u0001\u0080\u00FF\u00FE\u0002");
    assertEquals(128, source.byteAt(2));
    assertEquals(255, source.byteAt(3));
    assertEquals(0x0180, source.uint16At(1));
    assertEquals(0x80FF, source.uint16At(2));
    assertEquals(0x000180FFL, source.uint32At(0));
    assertEquals(0x80FFFE02L, source.uint32At(2));
  }

  @ParameterizedTest
  @CsvSource({
    "0, 10, true",
    "0, 11, false",
    "9, 1, true",
    "10, 0, true",
    "10, 1, false",
    "11, 0, false",
    "-1, 1, false",
    "0, 0, true",
    "1, -1, false",
    "3, 2147483647, false"
  })
  void bytesAreThereFromTheFirstToTheLast(int position, int count, boolean there) {
    assertEquals(there, DIGITS.has(position, count));
  }

  @Test
  void aByteOutsideIsADefectOfTheCaller() {
    assertThrows(IndexOutOfBoundsException.class, () -> DIGITS.byteAt(10));
    assertThrows(IndexOutOfBoundsException.class, () -> DIGITS.byteAt(-1));
    assertThrows(IndexOutOfBoundsException.class, () -> DIGITS.uint16At(9));
    assertThrows(IndexOutOfBoundsException.class, () -> DIGITS.uint32At(7));
  }

  @Test
  void aDigitIsFrom0To9() {
    ByteSource source = source("/09:");
    assertFalse(source.isDigitAt(-1));
    assertFalse(source.isDigitAt(0));
    assertTrue(source.isDigitAt(1));
    assertTrue(source.isDigitAt(2));
    assertFalse(source.isDigitAt(3));
    assertFalse(source.isDigitAt(4));
  }

  @Test
  void aByteIsFoundFromThePlaceOnAndBeforeTheEnd() {
    ByteSource source = source("abcabc\u00FF");
    assertEquals(0, source.indexOf('a', 0));
    assertEquals(0, source.indexOf('a', -5));
    assertEquals(3, source.indexOf('a', 1));
    assertEquals(3, source.indexOf('a', 3));
    assertEquals(-1, source.indexOf('a', 4));
    assertEquals(6, source.indexOf(0xFF, 0));
    assertEquals(-1, source.indexOf('a', 1, 3));
    assertEquals(3, source.indexOf('a', 1, 4));
    assertEquals(-1, source.indexOf('x', 0, 100));
  }

  @Test
  void itStartsWithBytesOnlyWhereAllOfThemAreThere() {
    assertTrue(DIGITS.startsWith(8, '8', '9'));
    assertFalse(DIGITS.startsWith(9, '9', '0'));
    assertFalse(DIGITS.startsWith(8, '8', '0'));
    assertFalse(DIGITS.startsWith(8, '0', '9'));
    assertFalse(DIGITS.startsWith(-1, '0'));
  }

  @ParameterizedTest
  @CsvSource({
    "2, 3, 234, 2",
    "0, 10, 0123456789, 0",
    "8, 5, 89, 8",
    "-2, 3, 012, 0",
    "10, 1, '', 10",
    "20, 1, '', 10",
    "4, -1, '', 4"
  })
  void aSliceIsCutToWhatIsThere(int position, int count, String expected, int origin) {
    ByteSource slice = DIGITS.slice(position, count);
    assertEquals(expected, text(slice));
    assertEquals(new ByteRange(origin, expected.length()), slice.range());
  }

  @Test
  void aSliceOfASliceKnowsItsPlaceInTheFile() {
    ByteSource slice =
        ByteSource.of(TransactionSamples.ascii("0123456789"), 100).from(3).slice(2, 4);
    assertEquals("5678", text(slice));
    assertEquals(105, slice.origin());
    assertEquals('6', slice.byteAt(1));
    assertEquals("78", text(slice.from(2)));
  }

  @Test
  void aBufferIsTakenFromItsPositionToItsLimit() {
    ByteBuffer buffer = ByteBuffer.wrap(TransactionSamples.ascii("0123456789"));
    buffer.position(2).limit(6);
    ByteSource source = ByteSource.of(buffer);
    assertEquals("2345", text(source));
    assertEquals(0, source.origin());
    assertEquals(4, source.length());
  }

  @Test
  void onlyASourceOfNoBytesIsEmpty() {
    assertTrue(source("").isEmpty());
    assertFalse(source("x").isEmpty());
    assertTrue(DIGITS.slice(10, 1).isEmpty());
  }

  @Test
  void charactersAreBytesOfTheSameNumber() {
    assertEquals("\u0000\u00E9\u00FF", source("x\u0000\u00E9\u00FFx").latin1(1, 3));
  }

  @Test
  void sourcesOfTheSameBytesAreTheSameWhereverTheyStand() {
    assertTrue(source("34").hasSameBytes(DIGITS.slice(3, 2)));
    assertFalse(source("35").hasSameBytes(DIGITS.slice(3, 2)));
    assertFalse(source("345").hasSameBytes(DIGITS.slice(3, 2)));
    assertTrue(DIGITS.slice(3, 2).hasSameBytes(source("34")));
  }

  @Test
  void theDigestIsThatOfTheBytes() {
    assertEquals(
        "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad",
        source("xabcx").slice(1, 3).sha256());
    assertEquals(
        "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855", source("").sha256());
  }

  @Test
  void noViewLetsTheBytesBeChangedOrTheirPlaceMoved() {
    ByteBuffer view = DIGITS.asBuffer();
    assertThrows(ReadOnlyBufferException.class, () -> view.put((byte) 1));
    assertEquals('0', view.get());
    assertEquals('0', DIGITS.asBuffer().get());
    byte[] copy = DIGITS.toArray();
    copy[0] = 'x';
    assertEquals('0', DIGITS.byteAt(0));
  }

  @Test
  void whatABase64TextStandsForIsReadLikeOtherBytes() {
    byte[] image = new byte[3000];
    for (int i = 0; i < image.length; i++) {
      image[i] = (byte) (i * 7);
    }
    String text = Base64.getEncoder().encodeToString(image);
    ByteSource coded = ByteSource.ofBase64(source("<a>" + text).from(3), image.length);
    assertEquals(3000, coded.length());
    assertEquals(3, coded.origin());
    for (int at : new int[] {0, 1023, 1024, 2999}) {
      assertEquals(at * 7 & 0xFF, coded.byteAt(at));
    }
    assertArrayEquals(image, coded.toArray());
    assertEquals(ByteSource.of(image).sha256(), coded.sha256());
  }

  /** 1024 bytes are decoded first, so that each kind of look has to ask for all that it needs. */
  @Test
  void bytesBehindTheFirstOfABase64TextAreDecodedForWhateverLooksAtThem() {
    byte[] image = new byte[2000];
    for (int i = 0; i < image.length; i++) {
      image[i] = (byte) (i % 251);
    }
    ByteSource plain = ByteSource.of(image);
    String text = Base64.getEncoder().encodeToString(image);
    assertEquals(plain.byteAt(1024), started(text).byteAt(1024));
    assertEquals(plain.uint16At(1023), started(text).uint16At(1023));
    assertEquals(plain.uint32At(1021), started(text).uint32At(1021));
    assertEquals(plain.latin1(1020, 5), started(text).latin1(1020, 5));
    assertEquals(plain.indexOf(40, 1000), started(text).indexOf(40, 1000));
    assertEquals(-1, started(text).indexOf(255, 0));
    assertEquals(text(plain.slice(1020, 5)), text(started(text).slice(1020, 5)));
    assertEquals(2000, started(text).asBuffer().remaining());
    assertTrue(started(text).hasSameBytes(plain));
    assertTrue(plain.hasSameBytes(started(text)));
  }

  /** With its first bytes decoded. */
  private static ByteSource started(String text) {
    ByteSource coded = ByteSource.ofBase64(source(text), 2000);
    assertEquals(0, coded.byteAt(0));
    return coded;
  }
}
