package ridgeproof.imagery.standin;

import java.util.Optional;
import java.util.function.DoubleFunction;

/** Finds the finest coding with loss that leaves room for no more than padding. */
final class Rates {

  /** Nearer to the room that there is than this share no further rate is tried. */
  private static final double NEAR = 0.85;

  private static final double AIM = 0.95;
  private static final int MOST = 8;
  private static final double MIN_BITS_PER_PIXEL = 0.05;

  private Rates() {}

  /**
   * The codestream.
   *
   * @param room bytes that there are
   * @param shortest bytes of the shortest padding
   * @param first bits per pixel to begin with
   * @param most bits per pixel
   * @param encoder by bits per pixel; what comes out is about in proportion
   */
  static Optional<byte[]> fitting(
      int room, int shortest, double first, double most, DoubleFunction<byte[]> encoder) {
    Optional<byte[]> best = Optional.empty();
    double rate = first;
    for (int i = 0; i < MOST; i++) {
      byte[] bytes = encoder.apply(rate);
      int spare = room - bytes.length;
      boolean fits = SegmentPadding.fills(spare, shortest);
      if (fits && best.map(b -> b.length < bytes.length).orElse(true)) {
        best = Optional.of(bytes);
      }
      if (fits && bytes.length >= NEAR * room) {
        break;
      }
      rate = Math.max(MIN_BITS_PER_PIXEL, Math.min(most, rate * AIM * room / bytes.length));
    }
    return best;
  }
}
