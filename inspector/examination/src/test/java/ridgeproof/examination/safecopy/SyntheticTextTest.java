package ridgeproof.examination.safecopy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ridgeproof.spec.layout.CharacterType;

class SyntheticTextTest {

  private static final String DIGITS = "0123456789";
  private static final String CAPITALS = "ABCDEFGHIJKLMNOPQRSTUVWXYZ";

  private static SyntheticText plain(String text) {
    return new SyntheticText(text, text.length(), CharacterType.ANY);
  }

  /** Every character that ever takes the place of the one there. */
  private static String members(SyntheticText texts, String text, int place) {
    Random random = new Random(5);
    Set<Character> seen = new TreeSet<>();
    for (int i = 0; i < 2_000; i++) {
      String made = texts.like(text, random);
      assertEquals(text.length(), made.length());
      seen.add(made.charAt(place));
    }
    return seen.stream().map(String::valueOf).collect(Collectors.joining());
  }

  @ParameterizedTest
  @CsvSource({
    "A, ABCDEFGHIJKLMNOPQRSTUVWXYZ",
    "Z, ABCDEFGHIJKLMNOPQRSTUVWXYZ",
    "a, abcdefghijklmnopqrstuvwxyz",
    "z, abcdefghijklmnopqrstuvwxyz",
    "0, 0123456789",
    "9, 0123456789",
    "@, @",
    "[, [",
    "`, `",
    "{, {",
    "/, /",
    ":, :",
    "' ', ' '",
    "~, ~"
  })
  void aCharacterBecomesAnyOfItsKind(String character, String members) {
    assertEquals(members, members(plain(character), character, 0));
  }

  @Test
  void inHexadecimalDigitsAllBecomeThose() {
    SyntheticText texts = new SyntheticText("0F", 2, CharacterType.H);
    assertEquals(DIGITS + "ABCDEF", members(texts, "0F", 0));
    assertEquals(DIGITS + "ABCDEF", members(texts, "0F", 1));
  }

  @Test
  void inBase64LettersAndDigitsChangePlaces() {
    SyntheticText texts = new SyntheticText("9A", 2, CharacterType.B64);
    assertEquals(DIGITS + CAPITALS, members(texts, "9A", 0));
    assertEquals(DIGITS + CAPITALS, members(texts, "9A", 1));
  }

  /** A template in a field of no stated kind: where its digits are tells of the print. */
  @ParameterizedTest
  @CsvSource({
    "A1, 16, false",
    "A1A, 11, true",
    "AAA, 11, false",
    "111, 11, false",
    "A1 , 11, false"
  })
  void aLongRunOfLettersAndDigitsMayBeATemplate(String part, int times, boolean mixed) {
    String text = (part + (part.length() < 3 && times == 11 ? " " : "")).repeat(times);
    assertEquals(mixed ? DIGITS + CAPITALS : kind(text.charAt(0)), members(plain(text), text, 0));
  }

  private static String kind(char first) {
    return Character.isDigit(first) ? DIGITS : CAPITALS;
  }

  @ParameterizedTest
  @CsvSource({
    "\u00e9, \u00e9", "\u0080, \u00e9", "\u00fc, \u00e9", "\u07ff, \u00e9",
    "\u0800, \u6c34", "\u4eba, \u6c34", "\uffee, \u6c34", "\ud800\udc00, \ud840\udc00",
    "\ud83d\ude00, \ud840\udc00"
  })
  void beyondAsciiThereIsOneCharacterForEachNumberOfBytes(String text, String made) {
    int bytes = text.getBytes(StandardCharsets.UTF_8).length;
    SyntheticText texts = new SyntheticText(text, bytes, CharacterType.ANY);
    assertEquals(made, texts.like(text, new Random(1)));
    assertEquals(made, texts.ofItsOwn(text, new Random(1)));
    assertEquals(made, texts.filler(text));
    assertEquals(bytes, made.getBytes(StandardCharsets.UTF_8).length);
  }

  @Test
  void ofOneByteEachTheyAreOneCharacterToo() {
    assertEquals("\u00e9\u00e9", plain("\u00c5\u00ff").like("\u00c5\u00ff", new Random(1)));
  }

  @Test
  void fillerSaysNothing() {
    String text = "Ada-42 azAZ09@[`{/:";
    assertEquals("Xxx-00 xxXX00@[`{/:", plain(text).filler(text));
  }

  @Test
  void ofItsOwnCharactersEachKindIsDealtOutAmongItsPlaces() {
    String text = "A-B12 ,c";
    Set<String> seen = new TreeSet<>();
    Random random = new Random(3);
    for (int i = 0; i < 500; i++) {
      String made = plain(text).ofItsOwn(text, random);
      assertTrue(made.matches("[ABc]-[ABc][12][12] ,[ABc]"), made);
      seen.add(made);
    }
    assertEquals(3 * 3 * 2 * 2 * 3, seen.size());
  }

  @Test
  void aTextThatBeginsWithABlankIsNoTemplate() {
    String text = " " + "A1".repeat(20);
    assertEquals(CAPITALS, members(plain(text), text, 1));
  }
}
