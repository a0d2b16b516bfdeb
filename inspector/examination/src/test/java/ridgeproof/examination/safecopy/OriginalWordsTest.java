package ridgeproof.examination.safecopy;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class OriginalWordsTest {

  private static final int SEARCHED = 400;

  private static OriginalWords words(String... values) {
    OriginalWords words = new OriginalWords();
    for (String value : values) {
      words.learn(value);
    }
    return words;
  }

  @ParameterizedTest
  @CsvSource({
    "'SPECIMEN,ADA', 'QSPECIMENQ'",
    "'SPECIMEN,ADA', 'xxada'",
    "'SPECIMEN,ADA', 'ADAxx'",
    "'SPECIMEN,ADA', 'ADA'",
    "'  specimen  ', 'SPECIMEN'",
    "'12 QUAY', 'a 12 quay'",
    "'B-507X', 'X507Y'",
    "'B507X81', 'QB507X81'",
    "'ÅSE', 'xåse'",
    "'A-B.C', 'xA-B.Cx'",
    "'19900214', '14021990'",
    "'19900214', 'x02141990'",
    "'19900214', '19900214'"
  })
  void aWordOfTheOriginalIsFoundWhereverItIs(String value, String text) {
    assertTrue(words(value).occurIn(text));
  }

  @ParameterizedTest
  @CsvSource({
    "'SPECIMEN,ADA', 'SPECIMEX,ADX'",
    "'SPECIMEN,ADA', 'AD'",
    "'SPECIMEN,ADA', ''",
    "'AB,CD', 'AB CD'",
    "'19901399', '99131990'",
    "'1990', '199'"
  })
  void whatIsNoneOfThemIsNot(String value, String text) {
    assertFalse(words(value).occurIn(text));
  }

  @ParameterizedTest
  @ValueSource(strings = {"000", "00000000", "00"})
  void zerosAloneTellOfNobody(String zeros) {
    assertFalse(words(zeros).occurIn("000000000"));
  }

  @Test
  void wordsThatBeginAlikeAreAllKnown() {
    OriginalWords words = words("SPECIMEN", "SPEX", "SPE");
    assertTrue(words.occurIn("ASPEX"));
    assertTrue(words("SPECIMEN", "SPEX").occurIn("ASPEX"));
    assertTrue(words("SPEX", "SPECIMEN").occurIn("SPECIMEN"));
  }

  @Test
  void theFirst400CharactersOfALongTextAreSearched() {
    String before = "-".repeat(SEARCHED - 4);
    assertTrue(words(before + " ADA REST").occurIn("ADA"));
    assertFalse(words(before + "   ADA").occurIn("ADA"));
    assertTrue(words("A" + before + "   ADA").occurIn("x" + "A" + before + "   x"));
  }
}
