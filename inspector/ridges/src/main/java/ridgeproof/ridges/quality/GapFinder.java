package ridgeproof.ridges.quality;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ridgeproof.ridges.map.BlockGrid;
import ridgeproof.ridges.map.RidgeMaps;
import ridgeproof.ridges.map.RidgeRegion;
import ridgeproof.ridges.map.Statistics;

/**
 * Looks for a strip without ridges between parts of one print, row by row across the finger. A row
 * counts when ridges stand firmly on either side of the strip and it lies in line with those of the
 * other rows.
 */
final class GapFinder {

  /** Blocks; 1.2 mm, a crease or scar is narrower. */
  private static final int MIN_GAP = 2;

  /** Blocks; 8.5 mm, what lies farther apart is another print. */
  private static final int MAX_GAP = 14;

  /** Blocks of ridges, 2.4 mm, that stand on either side. */
  private static final int FIRM = 4;

  /** Of those blocks. */
  private static final int FIRM_AT_LEAST = 3;

  /** Blocks, 3.7 mm: strips farther from the middle of the others are other faults. */
  private static final double STRAY = 6;

  /** Of the rows of a part. */
  private static final double BESIDE = 0.75;

  private GapFinder() {}

  /**
   * Looks within the rows of a print.
   *
   * @param parts what else belongs to the image of this one finger; none in a slap
   */
  static GapMeasure find(RidgeMaps maps, RidgeRegion print, List<RidgeRegion> parts) {
    BlockGrid grid = maps.grid();
    boolean[] mask = print.mask();
    for (RidgeRegion part : parts) {
      if (isBeside(part, print)) {
        for (int block : part.blocks()) {
          mask[block] = true;
        }
      }
    }
    int rows = print.bottom() - print.top() + 1;
    List<Strip> strips = new ArrayList<>();
    for (int row = print.top(); row <= print.bottom(); row++) {
      widest(maps, mask, grid, row).ifPresent(strips::add);
    }
    double middle = median(strips.stream().mapToDouble(Strip::middle).toArray());
    double[] widths =
        strips.stream()
            .filter(strip -> Math.abs(strip.middle() - middle) <= STRAY)
            .mapToDouble(strip -> strip.width() * BlockGrid.BLOCK_MM)
            .toArray();
    return new GapMeasure(median(widths), (double) widths.length / rows);
  }

  private static double median(double[] values) {
    return Statistics.quantile(values, values.length, 0.5);
  }

  /** Blocks without ridges in one row. */
  private record Strip(double middle, int width) {}

  /** What lies mostly above or below is another joint. */
  private static boolean isBeside(RidgeRegion part, RidgeRegion print) {
    int common = Math.min(part.bottom(), print.bottom()) - Math.max(part.top(), print.top()) + 1;
    return common >= BESIDE * (part.bottom() - part.top() + 1);
  }

  private static Optional<Strip> widest(RidgeMaps maps, boolean[] mask, BlockGrid grid, int row) {
    Optional<Strip> widest = Optional.empty();
    int last = -1;
    for (int column = 0; column < grid.columns(); column++) {
      if (isRidge(maps, mask, grid, column, row)) {
        int gap = column - last - 1;
        boolean between = last >= 0 && gap >= MIN_GAP && gap <= MAX_GAP;
        if (between
            && gap > widest.map(Strip::width).orElse(0)
            && isFirm(maps, mask, grid, last, row, -1)
            && isFirm(maps, mask, grid, column, row, 1)) {
          widest = Optional.of(new Strip((last + column) / 2.0, gap));
        }
        last = column;
      }
    }
    return widest;
  }

  private static boolean isFirm(
      RidgeMaps maps, boolean[] mask, BlockGrid grid, int from, int row, int step) {
    int count = 0;
    for (int i = 0; i < FIRM; i++) {
      count += isRidge(maps, mask, grid, from + i * step, row) ? 1 : 0;
    }
    return count >= FIRM_AT_LEAST;
  }

  private static boolean isRidge(
      RidgeMaps maps, boolean[] mask, BlockGrid grid, int column, int row) {
    return grid.contains(column, row)
        && mask[grid.index(column, row)]
        && maps.isRidge(grid.index(column, row));
  }
}
