package ridgeproof.transaction.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static ridgeproof.transaction.reader.RawTransaction.source;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import ridgeproof.spec.layout.FieldNumber;

class TagTest {

  private static Optional<Tag> at(String text) {
    return Tag.at(source(text), 0, text.length());
  }

  @ParameterizedTest
  @CsvSource({
    "1.1:, 1, 1",
    "1.01:, 1, 1",
    "2.018:X, 2, 18",
    "14.999:, 14, 999",
    "99.123456789:, 99, 123456789"
  })
  void upToTwoAndNineDigitsWithAPointAndAColonAreATag(String text, int type, int field) {
    int colon = text.indexOf(':');
    assertEquals(
        Optional.of(new Tag(new FieldNumber(type, field), text.substring(0, colon), colon + 1)),
        at(text));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "114.003:",
        "1.1234567890:",
        "1.:",
        ".001:",
        "1.001",
        "1.001 :",
        "1-001:",
        "1,001:",
        "1.001;",
        "A.001:",
        "1.A:",
        "",
        "1",
        "1."
      })
  void anythingElseIsNone(String text) {
    assertEquals(Optional.empty(), at(text));
  }

  @Test
  void aTagEndsBeforeTheGivenEnd() {
    assertEquals(Optional.empty(), Tag.at(source("14.013:1"), 0, 6));
    assertEquals("14.013", Tag.at(source("14.013:1"), 0, 7).orElseThrow().text());
    assertEquals("4.013", Tag.at(source("14.013:1"), 1, 8).orElseThrow().text());
  }
}
