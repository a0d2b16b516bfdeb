package ridgeproof.imagery.measure;

import java.util.Arrays;
import ridgeproof.imagery.GrayImage;

/**
 * The longest run of rows that have one dark or middle gray level from edge to edge, as where lines
 * of an image were not transmitted and a decoder or a buffer left its own gray there. They cut
 * through the print. No scan has such rows: its ground is light, and what is dark in it are ridges.
 *
 * @param top first row
 * @param rows how many; 0 where there is none
 * @param level gray level
 */
public record EmptyBand(int top, int rows, int level) {

  /** Lossy compression leaves constant rows within so many gray levels. */
  private static final int TOLERANCE = 6;

  /** The ringing of a wavelet at the edge of the band, twice: it makes the band look smaller. */
  private static final int SKIRT = 40;

  /** Standard deviation in gray levels; paper and glass stay below, ridges above. */
  private static final double PRINT = 20;

  /** How much lighter at least half of all other pixels are. */
  private static final int LIGHTER = 48;

  static EmptyBand of(GrayImage image) {
    EmptyBand longest = new EmptyBand(0, 0, 0);
    int top = 0;
    while (top < image.height()) {
      int level = image.grayAt(0, top);
      int end = top;
      while (end < image.height() && isConstant(image, end, level)) {
        end++;
      }
      if (end - top > longest.rows) {
        longest = new EmptyBand(top, end - top, level);
      }
      top = Math.max(end, top + 1);
    }
    return longest.isDarkAmong(image) && longest.cutsPrint(image)
        ? longest
        : new EmptyBand(0, 0, 0);
  }

  private static boolean isConstant(GrayImage image, int row, int level) {
    for (int x = 0; x < image.width(); x++) {
      if (Math.abs(image.grayAt(x, row) - level) > TOLERANCE) {
        return false;
      }
    }
    return true;
  }

  /** Whether there is print beside it, which a frame that was laid around a scan leaves whole. */
  private boolean cutsPrint(GrayImage image) {
    return hasPrint(image, top - SKIRT) || hasPrint(image, top + rows - 1 + SKIRT);
  }

  private static boolean hasPrint(GrayImage image, int row) {
    if (row < 0 || row >= image.height()) {
      return false;
    }
    double sum = 0;
    double squares = 0;
    for (int x = 0; x < image.width(); x++) {
      sum += image.grayAt(x, row);
      squares += image.grayAt(x, row) * image.grayAt(x, row);
    }
    double mean = sum / image.width();
    return squares / image.width() - mean * mean >= PRINT * PRINT;
  }

  private boolean isDarkAmong(GrayImage image) {
    int[] counts = new int[GrayHistogram.LEVELS];
    for (int y = 0; y < image.height(); y++) {
      if (y < top || y >= top + rows) {
        for (int x = 0; x < image.width(); x++) {
          counts[image.grayAt(x, y)]++;
        }
      }
    }
    return Arrays.stream(counts).anyMatch(count -> count > 0)
        && GrayHistogram.of(counts).quantile(0.5) >= level + LIGHTER;
  }
}
