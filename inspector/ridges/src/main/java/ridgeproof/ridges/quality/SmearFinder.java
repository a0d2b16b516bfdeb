package ridgeproof.ridges.quality;

import ridgeproof.ridges.map.BlockGrid;
import ridgeproof.ridges.map.RidgeMaps;
import ridgeproof.ridges.map.RidgeMask;
import ridgeproof.ridges.map.RidgeRegion;

/** Finds ink without ridges in and next to a print. */
final class SmearFinder {

  /** Blocks around the print that are looked at, 3 mm. */
  private static final double REACH = 5;

  /** Of the way from paper to the middle level of the print. */
  private static final double INKED = 0.45;

  private SmearFinder() {}

  static SmearMeasure find(RidgeMaps maps, RidgeRegion region, GrayLevels levels, double middle) {
    double paper = levels.surround();
    if (paper < 0) {
      return new SmearMeasure(0, 0, 0, 0);
    }
    BlockGrid grid = maps.grid();
    boolean[] near = RidgeMask.dilate(region.mask(), grid, REACH);
    boolean[] smooth = new boolean[near.length];
    boolean[] clear = RidgeMask.majority(ridges(maps), grid, 1, 0.3);
    double least = INKED * Math.abs(paper - middle);
    for (int block = 0; block < near.length; block++) {
      boolean inked = Math.abs(paper - levels.mean(block)) >= least;
      smooth[block] = near[block] && inked && !clear[block];
    }
    smooth = RidgeMask.majority(smooth, grid, 1, 0.6);
    return measure(maps, smooth, region.size());
  }

  private static boolean[] ridges(RidgeMaps maps) {
    boolean[] ridges = new boolean[maps.grid().blocks()];
    for (int block = 0; block < ridges.length; block++) {
      ridges[block] = maps.isRidge(block);
    }
    return ridges;
  }

  private static SmearMeasure measure(RidgeMaps maps, boolean[] smear, int printBlocks) {
    int count = 0;
    double cos = 0;
    double sin = 0;
    double weights = 0;
    for (int block = 0; block < smear.length; block++) {
      if (smear[block]) {
        double weight = maps.tensors().coherence(block);
        double angle = 2 * maps.tensors().orientation(block);
        cos += weight * Math.cos(angle);
        sin += weight * Math.sin(angle);
        weights += 1;
        count++;
      }
    }
    double degrees = Math.toDegrees(Math.atan2(sin, cos)) / 2;
    return new SmearMeasure(
        count * BlockGrid.BLOCK_MM2,
        (double) count / Math.max(1, count + printBlocks),
        degrees < 0 ? degrees + 180 : degrees,
        weights == 0 ? 0 : Math.hypot(cos, sin) / weights);
  }
}
