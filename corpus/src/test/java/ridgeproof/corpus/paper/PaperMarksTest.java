package ridgeproof.corpus.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import ridgeproof.corpus.finger.SeededRandom;

class PaperMarksTest {

  @Test
  void aHoleIsDarkAndWordsAreOnThePaper() {
    byte[] gray = new byte[800 * 750];
    Arrays.fill(gray, (byte) 245);
    new PaperMarks(gray, 800, 750, 500, new SeededRandom(3, 1)).punch(new Paper(0, 0, 0, 1));
    long dark = IntStream.range(0, gray.length).filter(i -> (gray[i] & 0xFF) < 20).count();
    assertTrue(dark > 4000, "dark pixels " + dark);
    Arrays.fill(gray, (byte) 245);
    new PaperMarks(gray, 800, 750, 500, new SeededRandom(3, 1)).print(new Paper(1, 0, 0, 0));
    long ink = IntStream.range(0, gray.length).filter(i -> (gray[i] & 0xFF) < 60).count();
    assertTrue(ink > 500 && ink < 30_000, "inked pixels " + ink);
  }

  @Test
  void everyLetterOfATitleHasStrokesOnItsGrid() {
    for (char letter :
        "SPECIMENCARDHARBOUROFFICEPRINTSOFFINGERSDONOTFOLD0123456789".toCharArray()) {
      assertFalse(StrokeFont.strokes(letter).isEmpty(), "no strokes for " + letter);
      for (double[] stroke : StrokeFont.strokes(letter)) {
        assertEquals(0, stroke.length % 2, "half a point in " + letter);
        for (int i = 0; i < stroke.length; i++) {
          assertTrue(stroke[i] <= (i % 2 == 0 ? StrokeFont.WIDTH : StrokeFont.HEIGHT));
        }
      }
    }
  }

  @Test
  void valuesOutOfRangeAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> new Paper(0, 0, 0, 3));
    assertThrows(IllegalArgumentException.class, () -> new Paper(-1, 0, 0, 0));
  }
}
