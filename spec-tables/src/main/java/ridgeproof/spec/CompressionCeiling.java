package ridgeproof.spec;

/**
 * How far images of a format may be compressed.
 *
 * @param ratio uncompressed to compressed bytes
 * @param tolerancePercent how far beyond it an image may be before it is reported
 */
public record CompressionCeiling(
    String format, double ratio, double tolerancePercent, Source source) {

  public double most() {
    return ratio * (1 + tolerancePercent / 100);
  }
}
