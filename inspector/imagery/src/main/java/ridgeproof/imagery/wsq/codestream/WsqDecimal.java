package ridgeproof.imagery.wsq.codestream;

/**
 * A decimal number as WSQ segments store it: {@code ±mantissa · 10^-exponent} (WSQ specification
 * IAFIS-IC-0110, from memory).
 *
 * @param negative whether the sign is minus
 * @param exponent 0 to 255
 * @param mantissa 16 or 32 bits, unsigned
 */
public record WsqDecimal(boolean negative, int exponent, long mantissa) {

  /** The number. */
  public double value() {
    double magnitude = mantissa / Math.pow(10, exponent);
    return negative ? -magnitude : magnitude;
  }

  /** The closest number that a mantissa of at most {@code largestMantissa} can hold. */
  public static WsqDecimal closestTo(double value, long largestMantissa) {
    double magnitude = Math.abs(value);
    int exponent = 0;
    double scale = 1;
    while (exponent < 100
        && magnitude > 0
        && Math.rint(magnitude * scale * 10) <= largestMantissa) {
      exponent++;
      scale *= 10;
    }
    long mantissa = (long) Math.min(Math.rint(magnitude * scale), largestMantissa);
    return new WsqDecimal(value < 0, exponent, mantissa);
  }
}
