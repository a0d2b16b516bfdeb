package ridgeproof.examination;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class RetakeWordsTest {

  @Test
  void fingersOfOneHandAreNamedTogether() {
    assertEquals(
        "right index and ring fingers",
        RetakeWords.together(List.of("right index finger", "right ring finger")));
    assertEquals(
        "left index, middle, ring, and little fingers",
        RetakeWords.together(
            List.of(
                "left index finger",
                "left middle finger",
                "left ring finger",
                "left little finger")));
  }

  @Test
  void otherPrintsAreNamedInFull() {
    assertEquals("right thumb", RetakeWords.together(List.of("right thumb")));
    assertEquals(
        "left thumb and the right thumb",
        RetakeWords.together(List.of("left thumb", "right thumb")));
    assertEquals("finger", RetakeWords.together(List.of("finger")));
  }
}
