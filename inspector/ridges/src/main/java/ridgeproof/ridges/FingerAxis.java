package ridgeproof.ridges;

import java.util.Arrays;

/** Tells how far a finger leans: by the long axis of a long print, by the sides of a broad one. */
final class FingerAxis {

  private static final double LONG = 1.25;
  private static final double STEEPEST = 45;
  private static final int LEAST_ROWS = 8;

  private FingerAxis() {}

  static RotationMeasure of(RidgeRegion region, EdgeContact edges) {
    PrintShape shape = PrintShape.of(region);
    double intact = edges.isCutAtSide() || edges.isCutAtTop() || edges.isCutAtBottom() ? 0.6 : 1;
    if (shape.elongation() >= LONG && Math.abs(shape.degrees()) <= STEEPEST) {
      double confidence = Statistics.ramp(shape.elongation(), 1.15, 1.6);
      return new RotationMeasure(shape.degrees(), intact * confidence);
    }
    return bySides(region, edges);
  }

  private static RotationMeasure bySides(RidgeRegion region, EdgeContact edges) {
    int rows = region.bottom() - region.top() + 1;
    if (rows < LEAST_ROWS) {
      return new RotationMeasure(0, 0);
    }
    int[] first = new int[rows];
    int[] last = new int[rows];
    Arrays.fill(first, Integer.MAX_VALUE);
    Arrays.fill(last, -1);
    for (int block : region.blocks()) {
      int row = block / region.grid().columns() - region.top();
      int column = block % region.grid().columns();
      first[row] = Math.min(first[row], column);
      last[row] = Math.max(last[row], column);
    }
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
