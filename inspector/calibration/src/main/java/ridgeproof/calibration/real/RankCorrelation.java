package ridgeproof.calibration.real;

import java.util.Arrays;

/** Spearman's rank correlation; equal values share the mean of their ranks. */
final class RankCorrelation {

  private RankCorrelation() {}

  static double of(double[] one, double[] other) {
    double[] a = ranks(one);
    double[] b = ranks(other);
    double mean = (a.length - 1) / 2.0;
    double product = 0;
    double squaresA = 0;
    double squaresB = 0;
    for (int i = 0; i < a.length; i++) {
      product += (a[i] - mean) * (b[i] - mean);
      squaresA += (a[i] - mean) * (a[i] - mean);
      squaresB += (b[i] - mean) * (b[i] - mean);
    }
    return squaresA == 0 || squaresB == 0 ? 0 : product / Math.sqrt(squaresA * squaresB);
  }

  private static double[] ranks(double[] values) {
    return Arrays.stream(values)
        .map(
            value ->
                Arrays.stream(values).filter(v -> v < value).count()
                    + (Arrays.stream(values).filter(v -> v == value).count() - 1) / 2.0)
        .toArray();
  }
}
