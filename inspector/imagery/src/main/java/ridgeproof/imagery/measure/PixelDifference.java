package ridgeproof.imagery.measure;

import java.nio.ByteBuffer;
import java.util.Optional;
import ridgeproof.imagery.GrayImage;

/**
 * How far two images of one size lie apart.
 *
 * @param largest gray levels, 0 to 255
 * @param mean gray levels, over all pixels
 */
public record PixelDifference(int largest, double mean) {

  /** Nothing where the sizes differ. */
  public static Optional<PixelDifference> between(GrayImage one, GrayImage other) {
    if (one.width() != other.width() || one.height() != other.height()) {
      return Optional.empty();
    }
    ByteBuffer first = one.asBuffer();
    ByteBuffer second = other.asBuffer();
    int largest = 0;
    long sum = 0;
    while (first.hasRemaining()) {
      int difference = Math.abs((first.get() & 0xFF) - (second.get() & 0xFF));
      largest = Math.max(largest, difference);
      sum += difference;
    }
    return Optional.of(
        new PixelDifference(largest, (double) sum / ((long) one.width() * one.height())));
  }
}
