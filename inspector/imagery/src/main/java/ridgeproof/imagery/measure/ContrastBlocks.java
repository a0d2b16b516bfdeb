package ridgeproof.imagery.measure;

import java.nio.ByteBuffer;
import ridgeproof.imagery.GrayImage;

/**
 * The image cut into squares of {@value #BLOCK} pixels, each told by its contrast to be bare
 * ground, fading print or print. What is left over at the right and lower edge counts with the last
 * square.
 */
final class ContrastBlocks {

  /** Pixels of a side: two ridges at 500 ppi, so that each block of a print has dark and light. */
  public static final int BLOCK = 16;

  /**
   * Standard deviations in gray levels; paper and glass stay below the first, ridges above both.
   */
  private static final double FADING = 8;

  private static final double PRINT = 20;

  /** What a block shows. */
  enum Kind {
    BARE,
    FADING,
    PRINT
  }

  private final int columns;
  private final int rows;
  private final Kind[] kinds;
  private final GrayHistogram[] histograms;

  private ContrastBlocks(int columns, int rows, Kind[] kinds, GrayHistogram[] histograms) {
    this.columns = columns;
    this.rows = rows;
    this.kinds = kinds;
    this.histograms = histograms;
  }

  static ContrastBlocks of(GrayImage image) {
    int columns = Math.max(1, image.width() / BLOCK);
    int rows = Math.max(1, image.height() / BLOCK);
    Kind[] kinds = new Kind[columns * rows];
    int[][] counts = new int[Kind.values().length][GrayHistogram.LEVELS];
    ByteBuffer pixels = image.asBuffer();
    byte[] strip = new byte[image.width() * Math.min(image.height(), 2 * BLOCK)];
    for (int row = 0; row < rows; row++) {
      int top = row * BLOCK;
      int bottom = row == rows - 1 ? image.height() : top + BLOCK;
      pixels.get(top * image.width(), strip, 0, (bottom - top) * image.width());
      for (int column = 0; column < columns; column++) {
        int left = column * BLOCK;
        int right = column == columns - 1 ? image.width() : left + BLOCK;
        Kind kind = kindOf(strip, image.width(), left, right, bottom - top);
        kinds[row * columns + column] = kind;
        count(strip, image.width(), left, right, bottom - top, counts[kind.ordinal()]);
      }
    }
    GrayHistogram[] histograms = new GrayHistogram[counts.length];
    for (int i = 0; i < counts.length; i++) {
      histograms[i] = GrayHistogram.of(counts[i]);
    }
    return new ContrastBlocks(columns, rows, kinds, histograms);
  }

  private static Kind kindOf(byte[] strip, int width, int left, int right, int height) {
    int sum = 0;
    int squares = 0;
    for (int y = 0; y < height; y++) {
      int end = y * width + right;
      for (int i = y * width + left; i < end; i++) {
        int gray = strip[i] & 0xFF;
        sum += gray;
        squares += gray * gray;
      }
    }
    double count = (double) (right - left) * height;
    double mean = sum / count;
    double variance = squares / count - mean * mean;
    if (variance >= PRINT * PRINT) {
      return Kind.PRINT;
    }
    return variance >= FADING * FADING ? Kind.FADING : Kind.BARE;
  }

  private static void count(
      byte[] strip, int width, int left, int right, int height, int[] counts) {
    for (int y = 0; y < height; y++) {
      int end = y * width + right;
      for (int i = y * width + left; i < end; i++) {
        counts[strip[i] & 0xFF]++;
      }
    }
  }

  int columns() {
    return columns;
  }

  int rows() {
    return rows;
  }

  Kind kindAt(int column, int row) {
    return kinds[row * columns + column];
  }

  /** The pixels of all blocks of this kind. */
  GrayHistogram histogram(Kind kind) {
    return histograms[kind.ordinal()];
  }

  /** The pixels of the whole image. */
  GrayHistogram histogram() {
    GrayHistogram sum = histograms[0];
    for (int i = 1; i < histograms.length; i++) {
      sum = sum.plus(histograms[i]);
    }
    return sum;
  }
}
