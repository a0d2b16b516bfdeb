package ridgeproof.imagery.platen;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Rows and columns that differ from both their neighbors all along, as only a sensor makes them.
 */
final class StandingOut {

  /** Gray levels, on the average over the line. */
  private static final double MIN_DIFFERENCE = 8;

  /** Times the difference of the usual line. */
  private static final double MIN_TIMES_USUAL = 4;

  /** Gray levels: a line that does not work is even, whatever lies on it. */
  private static final double MAX_DEVIATION = 12;

  private static final int MAX_LINES = 8;

  private final byte[] pixels;
  private final int width;
  private final int height;

  StandingOut(byte[] pixels, int width, int height) {
    this.pixels = pixels;
    this.width = width;
    this.height = height;
  }

  List<Integer> rows() {
    return width < 2 ? List.of() : standingOut(height, width, width);
  }

  List<Integer> columns() {
    return height < 2 ? List.of() : standingOut(width, height, 1);
  }

  /**
   * @param step from one line to the next
   */
  private List<Integer> standingOut(int lines, int length, int step) {
    double[] difference = new double[lines];
    double[] deviation = new double[lines];
    long[] sums = new long[lines];
    long[] squares = new long[lines];
    long[] differences = new long[lines];
    // In the order of memory, whichever way the lines run.
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        int at = y * width + x;
        int line = step == 1 ? x : y;
        int gray = pixels[at] & 0xFF;
        sums[line] += gray;
        squares[line] += gray * gray;
        if (line > 0 && line < lines - 1) {
          differences[line] +=
              Math.min(
                  Math.abs(gray - (pixels[at - step] & 0xFF)),
                  Math.abs(gray - (pixels[at + step] & 0xFF)));
        }
      }
    }
    for (int line = 0; line < lines; line++) {
      difference[line] = (double) differences[line] / length;
      double mean = (double) sums[line] / length;
      deviation[line] = Math.sqrt(Math.max(0, (double) squares[line] / length - mean * mean));
    }
    double[] sorted = difference.clone();
    Arrays.sort(sorted);
    double limit = MIN_DIFFERENCE + MIN_TIMES_USUAL * sorted[sorted.length / 2];
    List<Integer> found = new ArrayList<>();
    for (int i = 1; i < lines - 1 && found.size() < MAX_LINES; i++) {
      if (difference[i] >= limit && deviation[i] <= MAX_DEVIATION) {
        found.add(i);
      }
    }
    return found;
  }
}
