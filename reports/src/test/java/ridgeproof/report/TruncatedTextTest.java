package ridgeproof.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class TruncatedTextTest {

  @Test
  void whatIsLeftOutIsCountedInCharactersAndNotInHalves() {
    String most = "a".repeat(600);
    assertEquals(most, TruncatedText.of(most));
    assertEquals(most + " ... and 1 more character", TruncatedText.of(most + "b"));
    assertEquals(most + " ... and 2 more characters", TruncatedText.of(most + "b\uD83D\uDE00"));
  }
}
