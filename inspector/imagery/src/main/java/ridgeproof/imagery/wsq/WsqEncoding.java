package ridgeproof.imagery.wsq;

/**
 * How to encode an image.
 *
 * @param bitsPerPixel the rate that the bin widths are computed for, above 0 and at most 16; the
 *     codestream usually comes out smaller. 0.75 is the published rate for fingerprints at 500 ppi
 * @param ppi resolution in pixels per inch for the comment, or {@link #UNKNOWN_PPI}
 * @param softwareImplementation number of the encoding software for SOF, 0 to 65535
 */
public record WsqEncoding(double bitsPerPixel, int ppi, int softwareImplementation) {

  /** The resolution is not known. */
  public static final int UNKNOWN_PPI = -1;

  /** The published rate, about 15:1. */
  public static final double STANDARD_BITS_PER_PIXEL = 0.75;

  /** A higher rate, about 5:1. */
  public static final double HIGH_BITS_PER_PIXEL = 2.25;

  private static final double MAX_BITS_PER_PIXEL = 16;

  public WsqEncoding {
    if (!(bitsPerPixel > 0 && bitsPerPixel <= MAX_BITS_PER_PIXEL)) {
      throw new IllegalArgumentException(bitsPerPixel + " bits per pixel");
    }
    if (softwareImplementation < 0 || softwareImplementation > 0xFFFF) {
      throw new IllegalArgumentException("software number " + softwareImplementation);
    }
  }

  /** 0.75 bits per pixel. */
  public static WsqEncoding standard(int ppi) {
    return new WsqEncoding(STANDARD_BITS_PER_PIXEL, ppi, 0);
  }
}
