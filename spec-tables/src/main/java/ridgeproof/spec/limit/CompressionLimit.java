package ridgeproof.spec.limit;

import java.util.OptionalDouble;
import ridgeproof.spec.table.Source;

/**
 * How far images of a format may be compressed.
 *
 * @param ratio uncompressed to compressed bytes, of an image that shows print all over
 * @param bitsPerPixel the setting of the encoder that the ratio stands for, where the format has
 *     one
 * @param tolerancePercent how far beyond it an image may be before it is reported
 */
public record CompressionLimit(
    String format,
    double ratio,
    OptionalDouble bitsPerPixel,
    double tolerancePercent,
    Source source) {

  public double most() {
    return ratio * (1 + tolerancePercent / 100);
  }

  /** The least setting of the encoder that keeps to the ratio with its tolerance. */
  public OptionalDouble leastBitsPerPixel() {
    return bitsPerPixel.isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(bitsPerPixel.getAsDouble() * ratio / most());
  }

  /** The same with another ratio and no tolerance, as an agency asks for it. */
  public CompressionLimit askedBy(double otherRatio, Source agency) {
    OptionalDouble setting =
        bitsPerPixel.isEmpty()
            ? bitsPerPixel
            : OptionalDouble.of(bitsPerPixel.getAsDouble() * ratio / otherRatio);
    return new CompressionLimit(format, otherRatio, setting, 0, agency);
  }
}
