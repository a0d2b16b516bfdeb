package ridgeproof.imagery;

/**
 * Pixels for each inch.
 *
 * @param horizontalPpi pixels per inch
 * @param verticalPpi pixels per inch
 */
public record PixelDensity(double horizontalPpi, double verticalPpi) {

  /** By definition. */
  public static final double MM_PER_INCH = 25.4;

  public static PixelDensity ofPpi(double ppi) {
    return new PixelDensity(ppi, ppi);
  }

  /** From pixels per millimetre, as fields 1.011 and 1.012 give it. */
  public static PixelDensity ofPpmm(double ppmm) {
    return ofPpi(ppmm * MM_PER_INCH);
  }

  /** Of both directions, since ridges run in all; their geometric mean. */
  public double meanPpi() {
    return Math.sqrt(horizontalPpi * verticalPpi);
  }

  /** From pixels per centimetre, as x.009 and x.010 give it when x.008 is 2. */
  public static PixelDensity ofPpcm(double horizontal, double vertical) {
    return new PixelDensity(horizontal * MM_PER_INCH / 10, vertical * MM_PER_INCH / 10);
  }
}
