package ridgeproof.ridges.map;

import java.util.Arrays;

/** Order statistics of measured values. */
public final class Statistics {

  private Statistics() {}

  /** The value below which that share of the first values lies; 0 of none. Sorts them. */
  public static double quantile(double[] values, int count, double share) {
    if (count == 0) {
      return 0;
    }
    Arrays.sort(values, 0, count);
    return values[(int) Math.min(count - 1, Math.floor(share * count))];
  }

  /** Maps a value linearly to 0..1 between what is worst and what is best. */
  public static double ramp(double value, double worst, double best) {
    return Math.max(0, Math.min(1, (value - worst) / (best - worst)));
  }
}
