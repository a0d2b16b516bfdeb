package ridgeproof.imagery;

import java.time.Duration;
import java.util.OptionalLong;

/**
 * How much work images may be.
 *
 * @param maxPixels pixels of one image
 * @param timeLimit wall time for one image
 * @param filePixels pixels of all images of a file; empty for what its bytes make plausible
 * @param fileTime wall time for all images of a file
 */
public record DecodingLimits(
    long maxPixels, Duration timeLimit, OptionalLong filePixels, Duration fileTime) {

  /** Sets of prints at 500 ppi with full palms have fewer, however well they compress. */
  private static final long PLAUSIBLE_PIXELS = 40_000_000L;

  /** Twice what prints at 15 to 1 have, the most that bureaus accept. */
  private static final long PLAUSIBLE_PIXELS_PER_BYTE = 30;

  private static final Duration FILE_TIME = Duration.ofSeconds(120);

  /** With what is plausible for a file, and two minutes for it. */
  public DecodingLimits(long maxPixels, Duration timeLimit) {
    this(maxPixels, timeLimit, OptionalLong.empty(), FILE_TIME);
  }

  /** 200 million pixels and 60 seconds for an image. */
  public static DecodingLimits standard() {
    return new DecodingLimits(200_000_000L, Duration.ofSeconds(60));
  }

  /** The same with another time for one image. */
  public DecodingLimits withTimeLimit(Duration time) {
    return new DecodingLimits(maxPixels, time, filePixels, fileTime);
  }

  /** How many pixels all images of a file of so many bytes may have. */
  public long pixelsOf(long fileBytes) {
    return filePixels.orElse(PLAUSIBLE_PIXELS + PLAUSIBLE_PIXELS_PER_BYTE * fileBytes);
  }
}
