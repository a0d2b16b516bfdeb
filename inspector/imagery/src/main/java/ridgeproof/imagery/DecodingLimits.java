package ridgeproof.imagery;

import java.time.Duration;

/**
 * How much work one image may be.
 *
 * @param maxPixels pixels
 * @param timeLimit wall time
 */
public record DecodingLimits(long maxPixels, Duration timeLimit) {

  /** 200 million pixels, 60 seconds. */
  public static DecodingLimits standard() {
    return new DecodingLimits(200_000_000L, Duration.ofSeconds(60));
  }
}
