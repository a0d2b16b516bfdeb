package ridgeproof.calibration.print;

import java.util.stream.DoubleStream;

/** Numbers of one kind, sorted. */
public final class Distribution {

  private final double[] sorted;

  private Distribution(double[] sorted) {
    this.sorted = sorted;
  }

  public static Distribution of(DoubleStream values) {
    return new Distribution(values.sorted().toArray());
  }

  public int count() {
    return sorted.length;
  }

  public boolean isEmpty() {
    return sorted.length == 0;
  }

  public double mean() {
    return DoubleStream.of(sorted).average().orElse(0);
  }

  /** Of a sample; 0 of fewer than two. */
  public double deviation() {
    double mean = mean();
    double squares = DoubleStream.of(sorted).map(value -> (value - mean) * (value - mean)).sum();
    return sorted.length < 2 ? 0 : Math.sqrt(squares / (sorted.length - 1));
  }

  /** The value below which this share of them lies, between neighbours by their distance. */
  public double quantile(double share) {
    if (sorted.length == 0) {
      return 0;
    }
    double place = share * (sorted.length - 1);
    int below = (int) Math.floor(place);
    int above = Math.min(sorted.length - 1, below + 1);
    return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
  }

  /** The share that is at least as large. */
  public double shareFrom(double limit) {
    long large = DoubleStream.of(sorted).filter(value -> value >= limit).count();
    return sorted.length == 0 ? 0 : (double) large / sorted.length;
  }

  public long countWithin(double from, double below) {
    return DoubleStream.of(sorted).filter(value -> value >= from && value < below).count();
  }
}
