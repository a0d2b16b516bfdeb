package ridgeproof.spec.limit;

import ridgeproof.spec.table.Source;

/**
 * Resolutions at which friction ridge images are not to be compressed in a format.
 *
 * @param abovePpi pixels per inch beyond which the row holds, 0 for no bound
 * @param upToPpi pixels per inch up to which it holds, infinite for no bound
 * @param rule the row of the catalogue to report
 * @param instead what to use, in words
 */
public record DisallowedCompression(
    String format, double abovePpi, double upToPpi, String rule, String instead, Source source) {

  /** Whether no resolution needs to be known. */
  public boolean atAnyResolution() {
    return abovePpi <= 0 && Double.isInfinite(upToPpi);
  }

  public boolean covers(double ppi) {
    return ppi > abovePpi && ppi <= upToPpi;
  }
}
