package ridgeproof.transaction.xml;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Base64;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.transaction.record.ByteRange;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.record.Field;

/** Images in Base64 are looked at once, and no further than is asked for. */
class Base64Test {

  private static final String BEFORE = "<a>";
  private static final String AFTER = "</a>";

  private static ByteSource element(String text) {
    return ByteSource.of((BEFORE + text + AFTER).getBytes(StandardCharsets.ISO_8859_1));
  }

  private static Base64Run run(ByteSource element) {
    return new Base64Runs(element).at(BEFORE.length());
  }

  private static int textEnd(ByteSource element) {
    return element.length() - AFTER.length();
  }

  private static ByteSource image(ByteSource element) {
    int from = BEFORE.length();
    int end = textEnd(element);
    int length = new Base64Runs(element).within(from, end).decodedLength(element, end);
    return ByteSource.ofBase64(element.slice(from, end - from), length);
  }

  private static byte[] random(Random random, int length) {
    byte[] bytes = new byte[length];
    random.nextBytes(bytes);
    return bytes;
  }

  private static String lines(byte[] image, int width, String lineEnd) {
    return Base64.getMimeEncoder(width, lineEnd.getBytes(StandardCharsets.US_ASCII))
        .encodeToString(image);
  }

  /** Sizes around the pieces in which a text is looked at, with and without lines. */
  @Test
  void anyImageComesBackByteForByte() {
    Random random = new Random(20);
    for (int i = 0; i < 400; i++) {
      byte[] image = random(random, 1 + random.nextInt(i % 4 == 0 ? 40_000 : 1_600));
      String text = lines(image, i % 3 == 0 ? 0 : 4 + random.nextInt(90), "\r\n");
      ByteSource element = element(random.nextBoolean() ? text : "\n  " + text + "\n  ");
      assertEquals(Optional.empty(), run(element).firstOdd(element, textEnd(element)), text);
      assertEquals(textEnd(element), run(element).end());
      ByteSource read = image(element);
      int at = random.nextInt(image.length);
      assertEquals(image[at] & 0xFF, read.byteAt(at));
      assertArrayEquals(image, read.toArray());
      int from = random.nextInt(image.length);
      int count = random.nextInt(image.length - from + 1);
      assertArrayEquals(
          Arrays.copyOfRange(image, from, from + count),
          image(element).slice(from, count).toArray());
    }
  }

  @ParameterizedTest
  @CsvSource({
    "QUJD*REVG, 4, a character of code 0x2A, 6",
    "QUJDRA==QQ, 8, more after the end, 4",
    "QUJDRA==\u0020*, 9, a character of code 0x2A, 4",
    "QUJDRE, -1, '', 4",
    "QUJDR, 0, 5 digits and 0 fill characters, 3",
    "QUJDR===, 0, 5 digits and 3 fill characters, 3",
    "QUJDRA=, 0, 6 digits and 1 fill characters, 4",
    "QUJD====, 0, 4 digits and 4 fill characters, 3",
    "*, 0, a character of code 0x2A, 0",
    "=, 0, 0 digits and 1 fill characters, 0",
  })
  void whatDepartsIsTheFirstThatDoes(String text, int at, String what, int length) {
    ByteSource element = element(text);
    Base64Run run = new Base64Runs(element).within(BEFORE.length(), textEnd(element));
    assertEquals(
        at < 0 ? "" : what, run.firstOdd(element, textEnd(element)).map(o -> o.what()).orElse(""));
    run.firstOdd(element, textEnd(element))
        .ifPresent(odd -> assertEquals(BEFORE.length() + at, odd.range().offset()));
    assertEquals(length, run.decodedLength(element, textEnd(element)));
  }

  @Test
  void aDepartureFarIntoALongTextIsFoundAtItsPlace() {
    String text = Base64.getEncoder().encodeToString(random(new Random(1), 60_000));
    for (int at : new int[] {63, 64, 65, 8191, 8192, 8255, 8256, 8257, 50_000, 79_999}) {
      ByteSource element = element(text.substring(0, at) + "%" + text.substring(at + 1));
      Base64Run.Odd odd = run(element).firstOdd(element, textEnd(element)).orElseThrow();
      assertEquals("a character of code 0x25", odd.what());
      assertEquals(new ByteRange(BEFORE.length() + at, 1), odd.range());
      assertEquals(
          79_999 * 6 / 8, run(element).decodedLength(element, textEnd(element)), "one digit less");
    }
  }

  @Test
  void aTextOfTheWrongLengthIsNamedAsAWholeAtItsPlaceInTheFile() {
    ByteSource part = ByteSource.of("-QUJDR".getBytes(StandardCharsets.US_ASCII), 700);
    Base64Run run = new Base64Runs(part).at(1);
    Base64Run.Odd odd = run.firstOdd(part, 6).orElseThrow();
    assertEquals("5 digits and 0 fill characters", odd.what());
    assertEquals(new ByteRange(701, 5), odd.range());
  }

  @Test
  void aTextMayEndWithTheSource() {
    ByteSource text = ByteSource.of("QUJD*REVG*".getBytes(StandardCharsets.US_ASCII));
    assertEquals(6, new Base64Runs(text).at(0).decodedLength(text, 10));
  }

  @Test
  void aPlaceInAnImageWithBlanksIsThatOfItsDigitsInTheFile() {
    ByteSource part = ByteSource.of("QUJD REVG\n R0hJ".getBytes(StandardCharsets.US_ASCII), 700);
    ByteRange text = new ByteRange(700, 15);
    Field field = Field.inBase64(new FieldNumber(14, 999), "", text, text, 9);
    assertEquals(new ByteRange(705, 6), Base64Places.inFile(part, field, new ByteRange(703, 3)));
    assertEquals(new ByteRange(711, 4), Base64Places.inFile(part, field, new ByteRange(708, 1)));
    assertEquals(new ByteRange(700, 11), Base64Places.inFile(part, field, new ByteRange(700, 4)));
  }

  @Test
  void imagesAreTheSameWhateverTheirLinesAre() {
    byte[] image = random(new Random(3), 5_000);
    ByteSource one = image(element(lines(image, 76, "\r\n")));
    assertTrue(one.hasSameBytes(image(element(lines(image, 76, "\r\n")))));
    assertTrue(one.hasSameBytes(image(element(lines(image, 0, "")))));
    assertTrue(one.hasSameBytes(ByteSource.of(image)));
    assertTrue(ByteSource.of(image).hasSameBytes(one));
    for (int at : new int[] {0, 1, 55, 56, 57, 1023, 1024, 4_999}) {
      byte[] other = image.clone();
      other[at]++;
      assertFalse(one.hasSameBytes(image(element(lines(other, 76, "\r\n")))), "byte " + at);
      assertFalse(one.hasSameBytes(image(element(lines(other, 0, "")))), "byte " + at);
      assertFalse(one.hasSameBytes(ByteSource.of(other)), "byte " + at);
    }
    byte[] longer = Arrays.copyOf(image, image.length + 1);
    assertFalse(one.hasSameBytes(image(element(lines(longer, 76, "\r\n")))));
  }

  /** Where two texts differ first, each may have a digit, a line end, or nothing. */
  @Test
  void imagesAreTheSameWhicheverOfThemHasLines() {
    byte[] image = random(new Random(4), 3_000);
    String[] texts = {
      lines(image, 0, ""),
      lines(image, 76, "\n"),
      lines(image, 76, "\r"),
      lines(image, 40, "\n"),
      lines(image, 0, "") + "\n",
      "\n" + lines(image, 0, "")
    };
    for (String one : texts) {
      for (String two : texts) {
        assertTrue(image(element(one)).hasSameBytes(image(element(two))));
      }
    }
    assertFalse(image(element("QUJD")).hasSameBytes(image(element("RUJD"))));
    assertFalse(image(element("QUJD")).hasSameBytes(image(element("QUJE"))));
  }

  /** The last digit of an image has bits that no byte takes. */
  @Test
  void imagesThatDifferInUnusedBitsAreTheSame() {
    assertTrue(image(element("QUI=")).hasSameBytes(image(element("QUJ="))));
    assertTrue(image(element("QQ==\n\n\n\n")).hasSameBytes(image(element("QR==\n\n\n\n"))));
    assertFalse(image(element("QQ==\n\n\n\n")).hasSameBytes(image(element("Qg==\n\n\n\n"))));
    assertTrue(image(element("QQ==AAAA")).hasSameBytes(image(element("QQ==BBBB"))));
  }

  @Test
  void aPlaceInAnImageIsThatOfItsDigits() {
    Random random = new Random(5);
    for (int i = 0; i < 200; i++) {
      byte[] image = random(random, 2 + random.nextInt(20_000));
      ByteSource element = element("\n" + lines(image, i % 2 == 0 ? 0 : 76, "\n") + "\n");
      ByteRange text = new ByteRange(BEFORE.length(), textEnd(element) - BEFORE.length());
      Field field = Field.inBase64(new FieldNumber(14, 999), "", text, text, image.length);
      int from = random.nextInt(image.length - 1);
      int to = from + 1 + random.nextInt(image.length - from - 1);
      ByteRange place =
          Base64Places.inFile(element, field, new ByteRange(text.offset() + from, to - from));
      String digits = element.latin1(place.offset(), place.length());
      int group = from / 3 * 3;
      assertArrayEquals(
          Arrays.copyOfRange(image, group, Math.min((to + 2) / 3 * 3, image.length)),
          Base64.getMimeDecoder().decode(digits));
      ByteRange whole =
          Base64Places.inFile(element, field, new ByteRange(text.offset(), image.length));
      assertEquals(ByteRange.between(text.offset() + 1, text.end()), whole);
    }
  }
}
