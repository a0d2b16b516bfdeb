package ridgeproof.ledger.health;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The most likely place of a change of level in a series, by the rank test of Pettitt (1979), which
 * asks for no distribution.
 *
 * @param at index of the first value after the change
 * @param before median before
 * @param after median after
 * @param probability that a series without a change looks so, by Pettitt's bound
 */
record ChangePoint(int at, double before, double after, double probability) {

  /** Values that have to stand on each side. */
  static final int MIN_SIDE = 15;

  /** The change of a series; empty for fewer than twice {@value #MIN_SIDE} values. */
  static Optional<ChangePoint> of(double[] values) {
    int n = values.length;
    if (n < 2 * MIN_SIDE) {
      return Optional.empty();
    }
    double[] ranks = ranks(values);
    double sum = 0;
    double largest = 0;
    int place = 0;
    for (int t = 1; t < n; t++) {
      sum += ranks[t - 1];
      double u = Math.abs(2 * sum - t * (n + 1.0));
      if (u > largest && t >= MIN_SIDE && t <= n - MIN_SIDE) {
        largest = u;
        place = t;
      }
    }
    double cube = (double) n * n * n + (double) n * n;
    double probability = Math.min(1, 2 * Math.exp(-6 * largest * largest / cube));
    return Optional.of(
        new ChangePoint(
            place,
            median(Arrays.copyOfRange(values, 0, place)),
            median(Arrays.copyOfRange(values, place, n)),
            probability));
  }

  /** Equal values share the mean of their ranks. */
  static double[] ranks(double[] values) {
    int[] order =
        IntStream.range(0, values.length)
            .boxed()
            .sorted(Comparator.comparingDouble(i -> values[i]))
            .mapToInt(Integer::intValue)
            .toArray();
    double[] ranks = new double[values.length];
    int start = 0;
    while (start < order.length) {
      int end = start;
      while (end + 1 < order.length && values[order[end + 1]] == values[order[start]]) {
        end++;
      }
      for (int i = start; i <= end; i++) {
        ranks[order[i]] = (start + end) / 2.0 + 1;
      }
      start = end + 1;
    }
    return ranks;
  }

  static double median(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    int middle = sorted.length / 2;
    return sorted.length == 0
        ? Double.NaN
        : sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
  }
}
