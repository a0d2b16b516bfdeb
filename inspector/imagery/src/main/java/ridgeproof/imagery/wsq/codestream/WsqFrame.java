package ridgeproof.imagery.wsq.codestream;

/**
 * The content of SOF (WSQ specification IAFIS-IC-0110, from memory).
 *
 * @param offset of the marker in the file
 * @param black gray level of black, 0 to 255
 * @param white gray level of white, 0 to 255
 * @param height in pixels, 0 to 65535
 * @param width in pixels, 0 to 65535
 * @param shift M, the gray level that is added after the inverse transform
 * @param scale R, the factor that comes before the shift
 * @param encoderAlgorithm number of the encoding algorithm
 * @param softwareImplementation number of the encoding software
 */
public record WsqFrame(
    int offset,
    int black,
    int white,
    int height,
    int width,
    WsqDecimal shift,
    WsqDecimal scale,
    int encoderAlgorithm,
    int softwareImplementation) {

  /** Width times height. */
  public long pixels() {
    return (long) width * height;
  }
}
