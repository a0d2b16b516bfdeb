package ridgeproof.imagery.measure;

import ridgeproof.imagery.GrayImage;

/**
 * Rows and columns of one gray level at the edges that are no part of the scan: the pixels beside
 * them are of other levels.
 *
 * @param top rows
 * @param bottom rows
 * @param left columns
 * @param right columns
 */
public record EdgePadding(int top, int bottom, int left, int right) {

  /** Lossy compression leaves a constant edge within so many gray levels. */
  private static final int TOLERANCE = 3;

  /** A clean ground goes on beside the edge; of padding few pixels do. */
  private static final double MAX_ALIKE = 0.2;

  /** The ringing of a wavelet at the edge of the padding. */
  private static final int SKIRT = 16;

  /** A line of the image, counted inwards from one of its edges. */
  private interface Lines {
    int grayAt(int line, int along);
  }

  static EdgePadding of(GrayImage image) {
    int width = image.width();
    int height = image.height();
    return new EdgePadding(
        count(height, width, (line, along) -> image.grayAt(along, line)),
        count(height, width, (line, along) -> image.grayAt(along, height - 1 - line)),
        count(width, height, (line, along) -> image.grayAt(line, along)),
        count(width, height, (line, along) -> image.grayAt(width - 1 - line, along)));
  }

  public boolean isEmpty() {
    return widest() == 0;
  }

  /** Lines of the widest of the four. */
  public int widest() {
    return Math.max(Math.max(top, bottom), Math.max(left, right));
  }

  private static int count(int lines, int length, Lines image) {
    int level = image.grayAt(0, 0);
    int constant = 0;
    while (constant < lines && alike(image, constant, length, level) == length) {
      constant++;
    }
    if (constant == 0 || constant + SKIRT >= lines) {
      return 0;
    }
    int beside = alike(image, constant + SKIRT, length, level);
    return beside <= MAX_ALIKE * length ? constant : 0;
  }

  private static int alike(Lines image, int line, int length, int level) {
    int alike = 0;
    for (int along = 0; along < length; along++) {
      if (Math.abs(image.grayAt(line, along) - level) <= TOLERANCE) {
        alike++;
      }
    }
    return alike;
  }
}
