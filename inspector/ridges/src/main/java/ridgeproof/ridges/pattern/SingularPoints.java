package ridgeproof.ridges.pattern;

import java.util.ArrayList;
import java.util.List;
import ridgeproof.ridges.map.BlockGrid;
import ridgeproof.ridges.map.OrientationField;
import ridgeproof.ridges.map.RidgeMaps;
import ridgeproof.ridges.map.RidgeMask;
import ridgeproof.ridges.map.RidgeRegion;
import ridgeproof.ridges.pattern.SingularPoint.Kind;

/** Finds cores and deltas that outlast strong smoothing, and places them by weak smoothing. */
final class SingularPoints {

  private static final int STRONG = 9;
  private static final int WEAK = 3;

  /** Blocks: a core and a delta nearer than this are noise of the field. */
  private static final double CANCEL = 3.2;

  /** Blocks that weak smoothing may move a point. */
  private static final double MOVE = 4.5;

  /** Blocks to the rim within which a direction is that of the rim. */
  private static final double RIM = 2;

  /** Blocks of the ring that the opening of a core is read from. */
  private static final int RING = 4;

  private SingularPoints() {}

  static List<SingularPoint> of(RidgeMaps maps, RidgeRegion region) {
    BlockGrid grid = maps.grid();
    boolean[] mask = RidgeMask.fillHoles(region.mask(), grid, grid.blocks());
    boolean[] inner = RidgeMask.erode(mask, grid, RIM);
    OrientationField strong = OrientationField.of(maps, mask, STRONG);
    List<int[]> lasting = cancelled(turns(strong, inner));
    List<int[]> precise = turns(OrientationField.of(maps, mask, WEAK), inner);
    List<SingularPoint> points = new ArrayList<>();
    for (int[] turn : lasting) {
      int[] placed = nearest(turn, precise);
      double x = (placed[0] + 1) * BlockGrid.BLOCK / maps.scale();
      double y = (placed[1] + 1) * BlockGrid.BLOCK / maps.scale();
      points.add(
          turn[2] > 0
              ? new SingularPoint(Kind.CORE, x, y, opening(strong, turn))
              : new SingularPoint(Kind.DELTA, x, y, 0));
    }
    return points;
  }

  /** Column, row and half turns of each corner that has any. */
  private static List<int[]> turns(OrientationField field, boolean[] inner) {
    List<int[]> turns = new ArrayList<>();
    BlockGrid grid = field.grid();
    for (int row = 0; row + 1 < grid.rows(); row++) {
      for (int column = 0; column + 1 < grid.columns(); column++) {
        int halfTurns = inner[grid.index(column, row)] ? field.halfTurns(column, row) : 0;
        if (halfTurns != 0) {
          turns.add(new int[] {column, row, halfTurns});
        }
      }
    }
    return turns;
  }

  private static List<int[]> cancelled(List<int[]> turns) {
    List<int[]> left = new ArrayList<>(turns);
    boolean found = true;
    while (found) {
      found = false;
      double nearest = CANCEL;
      int a = -1;
      int b = -1;
      for (int i = 0; i < left.size(); i++) {
        for (int j = i + 1; j < left.size(); j++) {
          double distance = distance(left.get(i), left.get(j));
          if (left.get(i)[2] * left.get(j)[2] < 0 && distance < nearest) {
            nearest = distance;
            a = i;
            b = j;
            found = true;
          }
        }
      }
      if (found) {
        left.remove(b);
        left.remove(a);
      }
    }
    return left;
  }

  private static int[] nearest(int[] turn, List<int[]> precise) {
    int[] best = turn;
    double least = MOVE;
    for (int[] candidate : precise) {
      double distance = distance(turn, candidate);
      if (candidate[2] == turn[2] && distance < least) {
        least = distance;
        best = candidate;
      }
    }
    return best;
  }

  private static double distance(int[] a, int[] b) {
    return Math.hypot(a[0] - b[0], a[1] - b[1]);
  }

  /**
   * Around a core the direction of ridges is half the bearing plus a constant; the loop opens where
   * ridges run straight away from the core, at twice that constant.
   */
  private static double opening(OrientationField field, int[] core) {
    double cos = 0;
    double sin = 0;
    for (int dy = -RING; dy <= RING + 1; dy++) {
      for (int dx = -RING; dx <= RING + 1; dx++) {
        double bx = dx - 0.5;
        double by = dy - 0.5;
        double distance = Math.hypot(bx, by);
        if (distance >= 2 && distance <= RING + 0.5 && field.isKnown(core[0] + dx, core[1] + dy)) {
          double angle = field.doubled(core[0] + dx, core[1] + dy) - Math.atan2(by, bx);
          cos += Math.cos(angle);
          sin += Math.sin(angle);
        }
      }
    }
    double degrees = Math.toDegrees(Math.atan2(sin, cos));
    return degrees < 0 ? degrees + 360 : degrees;
  }
}
