package ridgeproof.spec.limit;

import java.util.OptionalDouble;
import ridgeproof.spec.table.Source;
import ridgeproof.spec.table.Table;

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

  public static CompressionLimit of(Table.Row row) {
    return new CompressionLimit(
        row.required("format"),
        row.parse("ratio", Double::parseDouble),
        row.optional("bits_per_pixel").stream()
            .mapToDouble(cell -> row.parse("bits_per_pixel", Double::parseDouble))
            .findFirst(),
        row.parse("tolerance_percent", Double::parseDouble),
        row.source());
  }

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
