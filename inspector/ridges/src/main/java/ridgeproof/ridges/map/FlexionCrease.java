package ridgeproof.ridges.map;

import java.util.Arrays;

/**
 * Cuts the skin of the lower phalanx from a print at the flexion crease: a line across the finger
 * along which hardly any ridge is clear, at the distance from the tip where the first joint lies.
 */
public final class FlexionCrease {

  /** Millimetres from the tip: no adult's distal pad is shorter or longer (common practice). */
  private static final double NEAREST = 15;

  private static final double FARTHEST = 38;

  /** Millimetres from an edge that cuts the tip off. */
  private static final double NEAREST_TO_CUT = 9;

  /** Of the clear ridges in the rows above, the most that a row along the crease has. */
  private static final double MAX_RIDGES = 0.45;

  /** Of those, how many there are again below it, and within how many blocks. */
  private static final double RECOVERY = 0.2;

  private static final int BELOW = 9;

  /** Of the print that lies above the crease at least. */
  private static final double MIN_KEPT = 0.5;

  /** The same of a print so long that it must show lower phalanges. */
  private static final double MIN_KEPT_OF_LONG = 0.15;

  /** Degrees either way that the finger may lean, and the steps in which leans are tried. */
  private static final int LEAN = 25;

  private static final int STEP = 5;

  private FlexionCrease() {}

  /**
   * A row that may be the crease.
   *
   * @param row of blocks below the tip; the last of the print without a crease
   * @param ridges clear ones in it, of those usual above it; 1 without a crease
   */
  private record Row(int row, double ridges) {}

  /** The print down to the crease; the whole where none is to be seen. */
  public static RidgeRegion distal(RidgeMaps maps, RidgeRegion print) {
    RidgeRegion distal = print;
    double barest = 1;
    for (int degrees = -LEAN; degrees <= LEAN; degrees += STEP) {
      int[] bins = bins(print, degrees);
      boolean isLong = length(bins) > FARTHEST;
      Row crease = crease(maps, print, bins);
      RidgeRegion above = above(print, bins, crease.row());
      boolean most = above.size() >= (isLong ? MIN_KEPT_OF_LONG : MIN_KEPT) * print.size();
      // Below a long print's crease there is as much again: the line is the barest, not the
      // highest.
      boolean better = isLong ? crease.ridges() < barest : above.size() < distal.size();
      if (most && better) {
        distal = above;
        barest = crease.ridges();
      }
    }
    return distal;
  }

  private static double length(int[] bins) {
    return Arrays.stream(bins).max().orElse(0) * BlockGrid.BLOCK_MM;
  }

  private static RidgeRegion above(RidgeRegion print, int[] bins, int crease) {
    int[] kept = new int[bins.length];
    int count = 0;
    for (int i = 0; i < bins.length; i++) {
      if (bins[i] <= crease) {
        kept[count++] = print.blocks()[i];
      }
    }
    return new RidgeRegion(print.grid(), Arrays.copyOf(kept, count));
  }

  /** For each block, how many rows of blocks it lies below the tip. */
  private static int[] bins(RidgeRegion print, int degrees) {
    double cos = Math.cos(Math.toRadians(degrees));
    double sin = Math.sin(Math.toRadians(degrees));
    int columns = print.grid().columns();
    double[] along = new double[print.size()];
    double tip = Double.MAX_VALUE;
    for (int i = 0; i < along.length; i++) {
      int block = print.blocks()[i];
      along[i] = block / columns * cos - block % columns * sin;
      tip = Math.min(tip, along[i]);
    }
    int[] bins = new int[along.length];
    for (int i = 0; i < bins.length; i++) {
      bins[i] = (int) (along[i] - tip);
    }
    return bins;
  }

  /** The first row with few clear ridges between rows with more; the last row without one. */
  private static Row crease(RidgeMaps maps, RidgeRegion print, int[] bins) {
    int last = Arrays.stream(bins).max().orElse(0);
    double[] clear = new double[last + 1];
    for (int i = 0; i < bins.length; i++) {
      clear[bins[i]] += maps.isRidge(print.blocks()[i]) ? 1 : 0;
    }
    double nearest = print.top() == 0 ? NEAREST_TO_CUT : NEAREST;
    int from = (int) Math.round(nearest / BlockGrid.BLOCK_MM);
    int to = Math.min(last - 1, (int) Math.round(FARTHEST / BlockGrid.BLOCK_MM));
    for (int bin = from; bin <= to; bin++) {
      double usual = Statistics.quantile(Arrays.copyOf(clear, bin), bin, 0.5);
      double here = smooth(clear, bin);
      boolean lowest = here <= smooth(clear, bin + 1) && here <= smooth(clear, bin - 1);
      if (lowest && here <= MAX_RIDGES * usual && recovers(clear, bin, here, usual)) {
        return new Row(bin, here / usual);
      }
    }
    return new Row(last, 1);
  }

  private static double smooth(double[] rows, int row) {
    double next = row + 1 < rows.length ? rows[row + 1] : 0;
    return (rows[row - 1] + 2 * rows[row] + next) / 4;
  }

  private static boolean recovers(double[] clear, int crease, double here, double usual) {
    double most = 0;
    for (int row = crease + 1; row <= Math.min(clear.length - 1, crease + BELOW); row++) {
      most = Math.max(most, smooth(clear, row));
    }
    return most >= RECOVERY * usual && most >= 2 * here;
  }
}
