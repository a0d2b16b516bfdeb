package ridgeproof.imagery.measure;

import ridgeproof.imagery.GrayImage;

/**
 * Whether the last line of an image continues in the first, as where the image begins in its
 * middle. Both lines are compared piece by piece, each without its slow changes, so that a common
 * frame or a common ground is no continuation.
 *
 * @param pieces pieces with ridges in both lines, along the edges where they join best
 * @param joined those among them whose ridges go on beyond the edge
 * @param vertical whether the left and the right edge join, rather than the upper and the lower
 */
public record Wraparound(int pieces, int joined, boolean vertical) {

  private static final int PIECE = 48;
  private static final int SMOOTHED = 12;

  /** Standard deviation in gray levels without slow changes; paper and glass stay far below. */
  private static final double MIN_CONTRAST = 12;

  /** Neighboring lines of a print are more alike than this, lines far apart seldom. */
  private static final double ALIKE = 0.75;

  static Wraparound of(GrayImage image) {
    int right = image.width() - 1;
    int bottom = image.height() - 1;
    double[] first = new double[image.height()];
    double[] last = new double[image.height()];
    for (int y = 0; y < image.height(); y++) {
      first[y] = image.grayAt(0, y);
      last[y] = image.grayAt(right, y);
    }
    Wraparound sides = of(first, last, true);
    first = new double[image.width()];
    last = new double[image.width()];
    for (int x = 0; x < image.width(); x++) {
      first[x] = image.grayAt(x, 0);
      last[x] = image.grayAt(x, bottom);
    }
    Wraparound ends = of(first, last, false);
    return ends.joined > sides.joined ? ends : sides;
  }

  /** The share of the pieces that join, 0 to 1. */
  public double share() {
    return pieces == 0 ? 0 : (double) joined / pieces;
  }

  private static Wraparound of(double[] first, double[] last, boolean vertical) {
    double[] one = withoutSlowChanges(first);
    double[] other = withoutSlowChanges(last);
    int pieces = 0;
    int joined = 0;
    for (int from = 0; from + PIECE <= one.length; from += PIECE) {
      double squares = 0;
      double otherSquares = 0;
      double product = 0;
      for (int i = from; i < from + PIECE; i++) {
        squares += one[i] * one[i];
        otherSquares += other[i] * other[i];
        product += one[i] * other[i];
      }
      if (Math.min(squares, otherSquares) >= PIECE * MIN_CONTRAST * MIN_CONTRAST) {
        pieces++;
        joined += product >= ALIKE * Math.sqrt(squares * otherSquares) ? 1 : 0;
      }
    }
    return new Wraparound(pieces, joined, vertical);
  }

  private static double[] withoutSlowChanges(double[] line) {
    double[] changes = new double[line.length];
    for (int i = 0; i < line.length; i++) {
      int from = Math.max(0, i - SMOOTHED);
      int to = Math.min(line.length, i + SMOOTHED + 1);
      double sum = 0;
      for (int k = from; k < to; k++) {
        sum += line[k];
      }
      changes[i] = line[i] - sum / (to - from);
    }
    return changes;
  }
}
