package ridgeproof.imagery.measure;

import java.nio.ByteBuffer;
import ridgeproof.imagery.GrayImage;

/** How often each of the 256 gray levels occurs. */
public final class GrayHistogram {

  /** Gray levels of 8 bits. */
  public static final int LEVELS = 256;

  private final int[] counts;
  private final long total;

  private GrayHistogram(int[] counts) {
    this.counts = counts;
    long sum = 0;
    for (int count : counts) {
      sum += count;
    }
    this.total = sum;
  }

  /** Counts every pixel. */
  public static GrayHistogram of(GrayImage image) {
    int[] counts = new int[LEVELS];
    ByteBuffer pixels = image.asBuffer();
    while (pixels.hasRemaining()) {
      counts[pixels.get() & 0xFF]++;
    }
    return new GrayHistogram(counts);
  }

  /** Copies the counts, one for each gray level. */
  public static GrayHistogram of(int[] counts) {
    return new GrayHistogram(counts.clone());
  }

  /** Both together. */
  public GrayHistogram plus(GrayHistogram other) {
    int[] sum = counts.clone();
    for (int gray = 0; gray < LEVELS; gray++) {
      sum[gray] += other.counts[gray];
    }
    return new GrayHistogram(sum);
  }

  /** Pixels counted. */
  public long total() {
    return total;
  }

  /** How many gray levels occur at least so often. */
  public int levels(int leastPixels) {
    int levels = 0;
    for (int count : counts) {
      if (count >= leastPixels) {
        levels++;
      }
    }
    return levels;
  }

  /** The share of the pixels at or below this gray level, 0 to 1; 0 without pixels. */
  public double share(int gray) {
    long seen = 0;
    for (int level = 0; level <= gray; level++) {
      seen += counts[level];
    }
    return total == 0 ? 0 : (double) seen / total;
  }

  /**
   * The gray level at or below which this share of the pixels lies.
   *
   * @param share 0 for the darkest level that occurs, 1 for the brightest
   */
  public int quantile(double share) {
    long wanted = Math.max(1, Math.round(share * total));
    long seen = 0;
    for (int gray = 0; gray < LEVELS; gray++) {
      seen += counts[gray];
      if (seen >= wanted) {
        return gray;
      }
    }
    return LEVELS - 1;
  }
}
