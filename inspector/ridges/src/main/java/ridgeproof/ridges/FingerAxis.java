package ridgeproof.ridges;

import java.util.Arrays;

/**
 * Tells how far a finger leans: by the long axis of a long print, else by the flow of its ridges
 * and the narrowest upright box together.
 */
final class FingerAxis {

  private static final double LONG = 1.25;

  /** Degrees; a steeper long axis is that of a print cut short. */
  private static final double STEEPEST = 60;

  /** Degrees either way within which a print that is not long is looked at. */
  private static final double REACH = 45;

  /** Degrees. */
  private static final double STEP = 1.5;

  private static final int STEPS = 1 + (int) (2 * REACH / STEP);

  /**
   * What a box larger by its own area weighs against full symmetry. On 364 drawn rolls of known
   * lean from -45 to 45 degrees anything from 2 to 4 leaves 98 in 100 within 7 degrees; either
   * evidence alone, 5 in 100 beyond 30.
   */
  private static final double BOX_WEIGHT = 3;

  /** Degrees beyond which another lean is another answer. */
  private static final double APART = 12;

  private FingerAxis() {}

  static RotationMeasure of(RidgeMaps maps, RidgeRegion region, EdgeContact edges) {
    PrintShape shape = PrintShape.of(region);
    double intact = edges.isCutAtSide() || edges.isCutAtTop() || edges.isCutAtBottom() ? 0.6 : 1;
    if (shape.elongation() >= LONG && Math.abs(shape.degrees()) <= STEEPEST) {
      double confidence = Statistics.ramp(shape.elongation(), 1.15, 1.6);
      return new RotationMeasure(shape.degrees(), intact * confidence);
    }
    return byFlowAndBox(maps, region, intact);
  }

  /**
   * Ridges flow alike on both sides of a finger's axis, but also nearly so across it; a roll is a
   * rounded rectangle, and its box of least area stands along its sides (Freeman and Shapira 1975),
   * but which of them are the sides it cannot tell. Together they can.
   */
  private static RotationMeasure byFlowAndBox(RidgeMaps maps, RidgeRegion region, double intact) {
    FlowSymmetry symmetry = new FlowSymmetry(maps, region);
    double[] outline = outline(region);
    double[] areas = new double[STEPS];
    double least = Double.MAX_VALUE;
    for (int step = 0; step < STEPS; step++) {
      areas[step] = boxArea(outline, degrees(step));
      least = Math.min(least, areas[step]);
    }
    double[] fits = new double[STEPS];
    int best = 0;
    for (int step = 0; step < STEPS; step++) {
      fits[step] = symmetry.along(degrees(step)) - BOX_WEIGHT * (areas[step] / least - 1);
      best = fits[step] > fits[best] ? step : best;
    }
    double second = -Double.MAX_VALUE;
    for (int step = 0; step < STEPS; step++) {
      if (Math.abs(degrees(step) - degrees(best)) >= APART) {
        second = Math.max(second, fits[step]);
      }
    }
    double clear = Statistics.ramp(fits[best] - second, 0, 0.4);
    return new RotationMeasure(degrees(best), intact * clear);
  }

  private static double degrees(int step) {
    return -REACH + step * STEP;
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
}
