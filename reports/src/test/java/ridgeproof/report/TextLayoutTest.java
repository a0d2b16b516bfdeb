package ridgeproof.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class TextLayoutTest {

  /** Two characters of Java that are one of text. */
  private static final String RARE = "\uD83D\uDC49";

  @Test
  void aLineIsFilledToItsWidthAndNoFurther() {
    assertEquals(List.of("aaa bbb"), TextLayout.wrap("aaa bbb", 7));
    assertEquals(List.of("aaa", "bbb"), TextLayout.wrap("aaa bbb", 6));
    assertEquals(List.of("aaa bb", "c"), TextLayout.wrap("aaa bb c", 7));
    assertEquals(List.of(""), TextLayout.wrap("", 7));
  }

  @Test
  void aLongerWordIsCutAtTheWidth() {
    assertEquals(List.of("abcd"), TextLayout.wrap("abcd", 4));
    assertEquals(List.of("abcd", "e"), TextLayout.wrap("abcde", 4));
    assertEquals(List.of("x", "abcd", "e y"), TextLayout.wrap("x abcde y", 4));
  }

  @Test
  void aCharacterOfTwoHalvesIsNeverCutInTwo() {
    assertEquals(List.of("abc", RARE + "d"), TextLayout.wrap("abc" + RARE + "d", 4));
    assertEquals(List.of("ab" + RARE, "d"), TextLayout.wrap("ab" + RARE + "d", 4));
  }

  @Test
  void aLeadStandsOnTheFirstLineAlone() {
    StringBuilder out = new StringBuilder();
    TextLayout.indented(out, "1. ", "aaa bbb ccc", 10);
    assertEquals("1. aaa bbb\n   ccc\n", out.toString());
  }
}
