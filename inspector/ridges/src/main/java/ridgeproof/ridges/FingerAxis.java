package ridgeproof.ridges;

import java.util.Arrays;

/**
 * Tells how far a finger leans: by the long axis of a long print, by the narrowest upright box of a
 * broad one, by its sides where an edge cuts it.
 */
final class FingerAxis {

  private static final double LONG = 1.25;
  private static final double STEEPEST = 45;

  /** Degrees. */
  private static final double STEP = 1.5;

  /** Degrees beyond which only what is clearly not round leans. */
  private static final double FAR = 25;

  /** Upright box over the least of a print that may be round: a disc of blocks has corners. */
  private static final double ROUND = 1.16;

  private static final int LEAST_ROWS = 8;

  private FingerAxis() {}

  static RotationMeasure of(RidgeRegion region, EdgeContact edges) {
    PrintShape shape = PrintShape.of(region);
    double intact = edges.isCutAtSide() || edges.isCutAtTop() || edges.isCutAtBottom() ? 0.6 : 1;
    if (shape.elongation() >= LONG && Math.abs(shape.degrees()) <= STEEPEST) {
      double confidence = Statistics.ramp(shape.elongation(), 1.15, 1.6);
      return new RotationMeasure(shape.degrees(), intact * confidence);
    }
    return intact == 1 ? byBox(region) : bySides(region, edges);
  }

  /**
   * A roll is a rounded rectangle, and its box of least area stands along its sides (Freeman and
   * Shapira 1975). A square turned by half a right angle tells no side from top, a disc nothing.
   */
  private static RotationMeasure byBox(RidgeRegion region) {
    double[] outline = outline(region);
    double best = 0;
    double least = Double.MAX_VALUE;
    double most = 0;
    for (double degrees = -STEEPEST; degrees <= STEEPEST; degrees += STEP) {
      double area = boxArea(outline, degrees);
      most = Math.max(most, area);
      if (area < least) {
        least = area;
        best = degrees;
      }
    }
    if (Math.abs(best) > FAR && boxArea(outline, 0) < ROUND * least) {
      return new RotationMeasure(0, 0);
    }
    double plain = 1 - Statistics.ramp(Math.abs(best), STEEPEST - 5, STEEPEST);
    return new RotationMeasure(best, plain * Statistics.ramp(most / least, 1.02, 1.2));
  }

  /** Corners of the outermost blocks of each row, x and y in turn, in blocks. */
  private static double[] outline(RidgeRegion region) {
    int rows = region.bottom() - region.top() + 1;
    int[] first = new int[rows];
    int[] last = new int[rows];
    sides(region, first, last);
    double[] outline = new double[rows * 8];
    int at = 0;
    for (int row = 0; row < rows; row++) {
      boolean empty = last[row] < 0;
      first[row] = empty ? first[row - 1] : first[row];
      last[row] = empty ? last[row - 1] : last[row];
      for (int corner = 0; corner < 4; corner++) {
        outline[at++] = corner < 2 ? first[row] : last[row] + 1;
        outline[at++] = row + corner % 2;
      }
    }
    return outline;
  }

  private static double boxArea(double[] outline, double degrees) {
    double cos = Math.cos(Math.toRadians(degrees));
    double sin = Math.sin(Math.toRadians(degrees));
    double left = Double.MAX_VALUE;
    double right = -Double.MAX_VALUE;
    double tip = Double.MAX_VALUE;
    double base = -Double.MAX_VALUE;
    for (int i = 0; i < outline.length; i += 2) {
      double across = outline[i] * cos + outline[i + 1] * sin;
      double along = outline[i + 1] * cos - outline[i] * sin;
      left = Math.min(left, across);
      right = Math.max(right, across);
      tip = Math.min(tip, along);
      base = Math.max(base, along);
    }
    return (right - left) * (base - tip);
  }

  private static void sides(RidgeRegion region, int[] first, int[] last) {
    Arrays.fill(first, Integer.MAX_VALUE);
    Arrays.fill(last, -1);
    for (int block : region.blocks()) {
      int row = block / region.grid().columns() - region.top();
      int column = block % region.grid().columns();
      first[row] = Math.min(first[row], column);
      last[row] = Math.max(last[row], column);
    }
  }

  private static RotationMeasure bySides(RidgeRegion region, EdgeContact edges) {
    int rows = region.bottom() - region.top() + 1;
    if (rows < LEAST_ROWS) {
      return new RotationMeasure(0, 0);
    }
    int[] first = new int[rows];
    int[] last = new int[rows];
    sides(region, first, last);
    double left = lean(first, rows / 5, rows - rows / 5);
    double right = lean(last, rows / 5, rows - rows / 5);
    boolean leftCut = edges.leftMm() > 0;
    boolean rightCut = edges.rightMm() > 0;
    if (leftCut && rightCut) {
      return new RotationMeasure(0, 0);
    }
    if (leftCut || rightCut) {
      return new RotationMeasure(leftCut ? right : left, 0.3);
    }
    double agreement = 1 - Statistics.ramp(Math.abs(left - right), 5, 40);
    return new RotationMeasure((left + right) / 2, 0.8 * agreement);
  }

  /** Median slope over all pairs of rows (Theil and Sen), as a lean to the right in degrees. */
  private static double lean(int[] side, int from, int to) {
    int n = to - from;
    double[] slopes = new double[n * (n - 1) / 2];
    int count = 0;
    for (int a = from; a < to; a++) {
      for (int b = a + 1; b < to; b++) {
        slopes[count++] = (double) (side[b] - side[a]) / (b - a);
      }
    }
    return -Math.toDegrees(Math.atan(Statistics.quantile(slopes, count, 0.5)));
  }
}
