package ridgeproof.ridges.quality;

import java.util.Arrays;
import ridgeproof.ridges.map.EdgeContact;
import ridgeproof.ridges.map.PrintShape;
import ridgeproof.ridges.map.RidgeMaps;
import ridgeproof.ridges.map.RidgeRegion;
import ridgeproof.ridges.map.Statistics;

/**
 * Tells how far a finger leans: by the long axis of a long print, else by the flow of its ridges
 * and the narrowest upright box together.
 */
final class FingerRotation {

  private static final double LONG = 1.35;

  /** Degrees; a steeper long axis is that of a print cut short. */
  private static final double STEEPEST = 60;

  /** Degrees either way within which a print that is not long is looked at. */
  private static final double REACH = 45;

  /** Degrees. */
  private static final double STEP = 1.5;

  private static final int STEPS = 1 + (int) (2 * REACH / STEP);

  /**
   * What a box larger by its own area weighs against full symmetry. Of 364 drawn rolls and as many
   * plain prints of known lean from -45 to 45 degrees, 95 in 100 come within 8.5 degrees and 98
   * within 9.5; by box or long axis alone, 5 in 100 rolls were off by more than 30.
   */
  private static final double BOX_WEIGHT = 3;

  /** What leaning so many degrees from the long axis of a long print weighs. */
  private static final double OFF = 10;

  private static final double AXIS_WEIGHT = 0.4;

  /** Degrees beyond which another lean is another answer. */
  private static final double APART = 12;

  private FingerRotation() {}

  static RotationMeasure of(RidgeMaps maps, RidgeRegion region, EdgeContact edges) {
    PrintShape shape = PrintShape.of(region);
    double intact = edges.isCutAtSide() || edges.isCutAtTop() || edges.isCutAtBottom() ? 0.6 : 1;
    double isLong = Statistics.ramp(shape.elongation(), 1.15, 1.6);
    double steep = Math.abs(shape.degrees());
    if (shape.elongation() >= LONG && steep > REACH && steep <= STEEPEST) {
      return new RotationMeasure(shape.degrees(), intact * isLong);
    }
    return fitted(maps, region, shape, steep > REACH ? 0 : isLong, intact);
  }

  /**
   * Ridges flow alike on both sides of a finger's axis, but also nearly so across it; a roll is a
   * rounded rectangle, and its box of least area stands along its sides (Freeman and Shapira 1975),
   * but which of them are the sides it cannot tell. Together they can, and the longer a print is,
   * the more its long axis says.
   */
  private static RotationMeasure fitted(
      RidgeMaps maps, RidgeRegion region, PrintShape shape, double isLong, double intact) {
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
      double off = (degrees(step) - shape.degrees()) / OFF;
      fits[step] =
          symmetry.along(degrees(step))
              - BOX_WEIGHT * (areas[step] / least - 1)
              - AXIS_WEIGHT * isLong * off * off;
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
