package ridgeproof.imagery.wsq;

import java.util.function.BooleanSupplier;

/**
 * How much work a decoder may do.
 *
 * @param maxPixels the largest image that is decoded; decoding takes up to 10 bytes a pixel
 * @param deadlineNanos the {@link System#nanoTime()} after which decoding stops
 * @param cancelled asked between strips of rows; true stops decoding
 */
public record DecodingLimits(long maxPixels, long deadlineNanos, BooleanSupplier cancelled) {

  /** 200 million pixels. */
  public static final long DEFAULT_MAX_PIXELS = 200_000_000L;

  private static final long FAR_AWAY_NANOS = Long.MAX_VALUE / 4;

  /** 200 million pixels, no deadline, and stopping when the thread is interrupted. */
  public static DecodingLimits standard() {
    return new DecodingLimits(
        DEFAULT_MAX_PIXELS,
        System.nanoTime() + FAR_AWAY_NANOS,
        () -> Thread.currentThread().isInterrupted());
  }

  /** The same with another largest image. */
  public DecodingLimits withMaxPixels(long pixels) {
    return new DecodingLimits(pixels, deadlineNanos, cancelled);
  }

  /** The same with a deadline so many nanoseconds from now. */
  public DecodingLimits withTimeLimit(long nanos) {
    return new DecodingLimits(maxPixels, System.nanoTime() + nanos, cancelled);
  }

  /** The same with another cancellation. */
  public DecodingLimits withCancellation(BooleanSupplier cancellation) {
    return new DecodingLimits(maxPixels, deadlineNanos, cancellation);
  }
}
