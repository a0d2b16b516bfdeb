package ridgeproof.ridges.quality;

import ridgeproof.ridges.map.BlockGrid;
import ridgeproof.ridges.map.RidgeMaps;
import ridgeproof.ridges.map.RidgeRegion;

/** How alike the ridges flow on both sides of a line through the middle of a print. */
final class FlowSymmetry {

  /** Pairs of blocks below which nothing can be said. */
  private static final int MIN_PAIRS = 50;

  private final BlockGrid grid;
  private final double[] cos;
  private final double[] sin;
  private final boolean[] ridges;
  private final int[] blocks;
  private final double middleX;
  private final double middleY;

  FlowSymmetry(RidgeMaps maps, RidgeRegion region) {
    grid = maps.grid();
    cos = new double[grid.blocks()];
    sin = new double[grid.blocks()];
    ridges = new boolean[grid.blocks()];
    blocks = region.blocks();
    middleX = region.centreX() / BlockGrid.BLOCK;
    middleY = region.centreY() / BlockGrid.BLOCK;
    for (int block : blocks) {
      double doubled = 2 * maps.tensors().orientation(block);
      cos[block] = Math.cos(doubled);
      sin[block] = Math.sin(doubled);
      ridges[block] = maps.isRidge(block);
    }
  }

  /**
   * Mean likeness of the directions in mirrored blocks: 1 the same, 0 no relation, -1 everywhere at
   * right angles or too little in common.
   *
   * @param degrees that the line leans to the right from straight up
   */
  double along(double degrees) {
    double angle = Math.toRadians(degrees + 90);
    double alongX = Math.cos(angle);
    double alongY = Math.sin(angle);
    double real = 0;
    double imaginary = 0;
    int pairs = 0;
    for (int block : blocks) {
      if (ridges[block]) {
        double x = block % grid.columns() + 0.5 - middleX;
        double y = block / grid.columns() + 0.5 - middleY;
        double along = x * alongX + y * alongY;
        int column = (int) Math.floor(middleX + 2 * along * alongX - x);
        int row = (int) Math.floor(middleY + 2 * along * alongY - y);
        int mirrored = grid.contains(column, row) ? grid.index(column, row) : block;
        if (mirrored != block && ridges[mirrored]) {
          real += cos[block] * cos[mirrored] - sin[block] * sin[mirrored];
          imaginary += sin[block] * cos[mirrored] + cos[block] * sin[mirrored];
          pairs++;
        }
      }
    }
    // A direction turns into four times the line's less itself, in doubled angles.
    return pairs < MIN_PAIRS
        ? -1
        : (real * Math.cos(4 * angle) + imaginary * Math.sin(4 * angle)) / pairs;
  }
}
