package ridgeproof.imagery.wsq.codestream;

import java.util.function.BooleanSupplier;

/**
 * How much work the WSQ decoder may do on one codestream.
 *
 * @param maxPixels the largest image that is decoded; decoding takes up to 10 bytes a pixel
 * @param deadlineNanos the {@link System#nanoTime()} after which decoding stops
 * @param cancelled asked between strips of rows; true stops decoding
 */
public record WsqLimits(long maxPixels, long deadlineNanos, BooleanSupplier cancelled) {

  /** 200 million pixels. */
  public static final long DEFAULT_MAX_PIXELS = 200_000_000L;

  private static final long FAR_AWAY_NANOS = Long.MAX_VALUE / 4;

  /** 200 million pixels, no deadline, and stopping when the thread is interrupted. */
  public static WsqLimits standard() {
    return new WsqLimits(
        DEFAULT_MAX_PIXELS, System.nanoTime() + FAR_AWAY_NANOS, new Interruption());
  }

  /** The same with another largest image. */
  public WsqLimits withMaxPixels(long pixels) {
    return new WsqLimits(pixels, deadlineNanos, cancelled);
  }

  /** The same with a deadline so many nanoseconds from now. */
  public WsqLimits withTimeLimit(long nanos) {
    return new WsqLimits(maxPixels, System.nanoTime() + nanos, cancelled);
  }

  /** The same with another cancellation. */
  public WsqLimits withCancellation(BooleanSupplier cancellation) {
    return new WsqLimits(maxPixels, deadlineNanos, cancellation);
  }

  /** A class and not a lambda, so that the first image of a short run need not set lambdas up. */
  private static final class Interruption implements BooleanSupplier {
    @Override
    public boolean getAsBoolean() {
      return Thread.currentThread().isInterrupted();
    }
  }
}
