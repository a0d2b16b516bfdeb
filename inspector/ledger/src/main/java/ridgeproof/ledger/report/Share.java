package ridgeproof.ledger.report;

import java.util.Locale;

/**
 * A part of a number of cases.
 *
 * @param of cases that are meant
 * @param all cases in all
 */
public record Share(long of, long all) {

  /** Fewer cases are given as they are, without a percentage. */
  public static final int MIN_CASES = 10;

  private static final double PERCENT = 100;

  /** Of the standard normal distribution, for 95 %. */
  private static final double Z = 1.959964;

  /** Bounds of a share, 0 to 1. */
  public record Interval(double low, double high) {}

  /** The share of both together. */
  Share plus(Share other) {
    return new Share(of + other.of, all + other.all);
  }

  /** Whether there are enough cases for a percentage. */
  public boolean isTelling() {
    return all >= MIN_CASES;
  }

  /** The share, 0 to 1; 0 of no cases. */
  public double value() {
    return all == 0 ? 0 : (double) of / all;
  }

  /** The 95 % interval of Wilson (1927), which keeps its promise for small numbers too. */
  public Interval interval() {
    if (all == 0) {
      return new Interval(0, 1);
    }
    double share = value();
    double weight = Z * Z / all;
    double middle = (share + weight / 2) / (1 + weight);
    double reach = Z * Math.sqrt(share * (1 - share) / all + weight / (4 * all)) / (1 + weight);
    return new Interval(Math.max(0, middle - reach), Math.min(1, middle + reach));
  }

  /** Such as {@code 12 of 40: 30 % (18 to 45 %)}. */
  public String words() {
    if (!isTelling()) {
      return of + " of " + all + " (fewer than " + MIN_CASES + " cases, no percentage)";
    }
    return String.format(
        Locale.ROOT,
        "%d of %d: %.0f %% (%.0f to %.0f %%)",
        of,
        all,
        PERCENT * value(),
        PERCENT * interval().low(),
        PERCENT * interval().high());
  }
}
