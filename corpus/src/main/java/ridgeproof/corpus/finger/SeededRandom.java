package ridgeproof.corpus.finger;

/**
 * A seeded generator that gives the same numbers on every machine and Java version: SplitMix64
 * (Steele, Lea and Flood, "Fast splittable pseudorandom number generators", OOPSLA 2014), written
 * out because java.util.random does not promise its algorithms. Not for use by several threads.
 */
public final class SeededRandom {

  private static final long GOLDEN = 0x9E3779B97F4A7C15L;

  private long state;

  /**
   * @param purpose what the numbers are for: other purposes of one seed draw other numbers
   */
  public SeededRandom(long seed, long purpose) {
    this.state = mix(mix(seed + GOLDEN) ^ (purpose * GOLDEN));
  }

  private static long mix(long z) {
    z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
    z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
    return z ^ (z >>> 31);
  }

  /** 64 random bits. */
  public long next() {
    state += GOLDEN;
    return mix(state);
  }

  /** Uniform in [0, 1). */
  public double unit() {
    return (next() >>> 11) * 0x1.0p-53;
  }

  /** Uniform in [low, high). */
  public double between(double low, double high) {
    return low + (high - low) * unit();
  }

  /** Uniform in [0, bound). */
  public int below(int bound) {
    return (int) (((next() >>> 33) * bound) >>> 31);
  }

  /** True with that probability. */
  public boolean chance(double probability) {
    return unit() < probability;
  }

  /** Standard normal, by Box and Muller 1958. */
  double gaussian() {
    double radius = Math.sqrt(-2 * StrictMath.log(1 - unit()));
    return radius * StrictMath.cos(2 * Math.PI * unit());
  }

  /** Normal around a mean, held within three deviations so that no draw is a freak. */
  public double around(double mean, double deviation) {
    return mean + deviation * Math.max(-3, Math.min(3, gaussian()));
  }
}
