package ridgeproof.imagery.platen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import ridgeproof.imagery.GrayImage;

class PlatenFactsTest {

  private static final int WIDTH = 640;
  private static final int HEIGHT = 480;
  private static final int CELL = 16;

  private final byte[] pixels = new byte[WIDTH * HEIGHT];

  PlatenFactsTest() {
    Random random = new Random(1);
    for (int i = 0; i < pixels.length; i++) {
      pixels[i] = (byte) (238 + random.nextInt(5));
    }
  }

  private void set(int x, int y, double gray) {
    pixels[y * WIDTH + x] = (byte) Math.max(0, Math.min(255, Math.round(gray)));
  }

  private double gray(int x, int y) {
    return pixels[y * WIDTH + x] & 0xFF;
  }

  private PlatenFacts facts() {
    return PlatenFacts.of(GrayImage.owning(WIDTH, HEIGHT, pixels.clone()), 500);
  }

  private void ridges(int left, int top, int right, int bottom, double contrast) {
    for (int y = top; y < bottom; y++) {
      for (int x = left; x < right; x++) {
        set(x, y, gray(x, y) - contrast * (1 + Math.sin(2 * Math.PI * (x + y / 4.0) / 9)) / 2);
      }
    }
  }

  private static int cellAt(int x, int y) {
    return y / CELL * (WIDTH / CELL) + x / CELL;
  }

  @Test
  void aBarePlatenShowsNothing() {
    PlatenFacts facts = facts();
    assertEquals(List.of(), facts.prints());
    assertEquals(List.of(), facts.stains());
    assertEquals(List.of(), facts.deadRows());
    assertEquals(List.of(), facts.deadColumns());
    assertEquals(0, facts.ghostShare());
    assertEquals(OptionalDouble.of(0), facts.unevenness());
    assertEquals(OptionalDouble.empty(), facts.printWidthMm());
  }

  @Test
  void aPrintIsBoxedAndItsWidthMeasured() {
    ridges(160, 96, 400, 400, 180);
    PlatenFacts facts = facts();
    assertEquals(List.of(new CellBox(9, 5, 26, 26)), facts.prints());
    assertEquals(17 * PlatenFacts.CELL_MM, facts.printWidthMm().orElseThrow(), 1e-9);
    assertEquals(List.of(), facts.stains());
  }

  @Test
  void aSpotBesideThePrintIsAStain() {
    ridges(160, 96, 400, 400, 180);
    for (int y = 64; y < 80; y++) {
      for (int x = 480; x < 496; x++) {
        set(x, y, 150);
      }
    }
    assertEquals(List.of(cellAt(480, 64)), facts().stains());
  }

  @Test
  void aSpotUnderThePrintIsNotSeen() {
    ridges(160, 96, 400, 400, 180);
    for (int y = 192; y < 208; y++) {
      for (int x = 240; x < 256; x++) {
        set(x, y, 60);
      }
    }
    assertEquals(List.of(), facts().stains());
  }

  @Test
  void aDeadColumnAndADeadRowAreFound() {
    ridges(160, 96, 400, 400, 180);
    for (int y = 0; y < HEIGHT; y++) {
      set(301, y, 0);
    }
    for (int x = 0; x < WIDTH; x++) {
      set(x, 77, 0);
    }
    PlatenFacts facts = facts();
    assertEquals(List.of(301), facts.deadColumns());
    assertEquals(List.of(77), facts.deadRows());
  }

  @Test
  void lightThatFallsOffIsMeasured() {
    for (int y = 0; y < HEIGHT; y++) {
      for (int x = 0; x < WIDTH; x++) {
        set(x, y, gray(x, y) - 60.0 * x / WIDTH);
      }
    }
    assertEquals(40, facts().unevenness().orElseThrow(), 3);
  }

  @Test
  void aFaintPatternIsAGhostAndGrainIsNot() {
    ridges(160, 96, 400, 400, 180);
    double before = facts().ghostShare();
    ridges(432, 96, 608, 400, 14);
    double after = facts().ghostShare();
    assertEquals(0, before, 0.02);
    assertTrue(after > 0.2, "share " + after);
  }

  @Test
  void cellsAreOfTheSameSizeAtAnyResolution() {
    PlatenFacts coarse = PlatenFacts.of(GrayImage.owning(WIDTH, HEIGHT, pixels), 500);
    PlatenFacts fine = PlatenFacts.of(GrayImage.owning(WIDTH, HEIGHT, pixels), 1000);
    assertEquals(coarse.width(), 2 * fine.width());
  }
}
