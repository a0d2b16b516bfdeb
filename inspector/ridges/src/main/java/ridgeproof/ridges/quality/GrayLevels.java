package ridgeproof.ridges.quality;

import java.util.Arrays;
import ridgeproof.ridges.map.BlockGrid;
import ridgeproof.ridges.map.RidgeMaps;
import ridgeproof.ridges.map.RidgeMask;
import ridgeproof.ridges.map.RidgeRegion;
import ridgeproof.ridges.map.Statistics;

/** Mean gray level of each block, and the levels of a print and of what surrounds it. */
public final class GrayLevels {

  /** Blocks around prints that belong to neither print nor paper. */
  private static final double HALO = 2;

  /** Part of the image that must lie outside the prints to say anything of the paper. */
  private static final double MIN_OUTSIDE = 0.04;

  /** Gray levels between the middle of print and paper. */
  private static final double DIFFERENT = 8;

  private static final double DRY = 0.4;
  private static final double DARK = 0.6;

  /** Of the gray level of the ground. */
  private static final double CLOSED = 0.4;

  private final RidgeMaps maps;
  private final float[] means;
  private final double surround;

  public GrayLevels(RidgeMaps maps) {
    this.maps = maps;
    means = maps.means();
    boolean[] prints = RidgeMask.dilate(maps.extentMask(), maps.grid(), HALO);
    double[] outside = new double[means.length];
    int count = 0;
    for (int block = 0; block < means.length; block++) {
      if (!prints[block]) {
        outside[count++] = means[block];
      }
    }
    surround = count < MIN_OUTSIDE * means.length ? -1 : Statistics.quantile(outside, count, 0.5);
  }

  double mean(int block) {
    return means[block];
  }

  /** Median gray level outside all prints; -1 when there is no outside. */
  double surround() {
    return surround;
  }

  ToneMeasure tone(RidgeRegion region, BlockMeasures blocks) {
    int[] counts = new int[256];
    BlockGrid grid = maps.grid();
    for (int block : region.blocks()) {
      int column = block % grid.columns();
      int row = block / grid.columns();
      for (int y = grid.top(row); y < grid.bottom(row); y++) {
        for (int x = grid.left(column); x < grid.right(column); x++) {
          counts[maps.pixels()[y * grid.width() + x] & 0xFF]++;
        }
      }
    }
    return new ToneMeasure(
        percentile(counts, 0.95) - percentile(counts, 0.05),
        blocks.contrast(),
        percentile(counts, 0.25),
        percentile(counts, 0.75),
        surround,
        blocks.ridgeShare(),
        blocks.shareWithin(0, DRY),
        blocks.shareWithin(DARK, 2),
        closedShare(region),
        blocks.faintShare(),
        modulation(blocks),
        polarity(blocks.level()));
  }

  private double closedShare(RidgeRegion region) {
    int closed = 0;
    for (int block : region.blocks()) {
      closed += !maps.isRidge(block) && means[block] < CLOSED * surround ? 1 : 0;
    }
    return (double) closed / region.size();
  }

  private double modulation(BlockMeasures blocks) {
    double depth = 2 * Math.abs(surround - blocks.level());
    return surround < 0 || depth < DIFFERENT ? 0 : blocks.contrast() / depth;
  }

  private ToneMeasure.Polarity polarity(double level) {
    if (surround < 0 || Math.abs(surround - level) < DIFFERENT) {
      return ToneMeasure.Polarity.UNKNOWN;
    }
    return surround > level ? ToneMeasure.Polarity.DARK_RIDGES : ToneMeasure.Polarity.LIGHT_RIDGES;
  }

  private static int percentile(int[] counts, double share) {
    long total = Arrays.stream(counts).asLongStream().sum();
    long sum = 0;
    for (int level = 0; level < counts.length; level++) {
      sum += counts[level];
      if (sum > share * total) {
        return level;
      }
    }
    return counts.length - 1;
  }
}
