package ridgeproof.imagery.measure;

import java.util.OptionalDouble;

/**
 * A square of pixels in which ridges run straight enough to count: their direction by the structure
 * tensor, their period along it (the x-signature of Hong, Wan and Jain, "Fingerprint image
 * enhancement", 1998, from memory) by autocorrelation.
 */
final class RidgeWindow {

  /** Pixels of a side: seven ridges at 500 ppi, three and a half at 1000 ppi. */
  static final int SIDE = 64;

  /** How far across the ridges the signature reaches, and how far along each is averaged. */
  private static final int REACH = 28;

  private static final int ALONG = 8;
  private static final int SAMPLES = 2 * REACH + 1;

  private static final double MIN_COHERENCE = 0.4;
  private static final double MIN_CORRELATION = 0.35;
  private static final int MIN_PERIOD = 3;
  private static final int MAX_PERIOD = 26;

  private RidgeWindow() {}

  /**
   * The ridge period in pixels; nothing where no ridges run in one direction.
   *
   * @param pixels {@value #SIDE} rows of as many gray levels
   */
  static OptionalDouble period(byte[] pixels) {
    double xx = 0;
    double yy = 0;
    double xy = 0;
    for (int y = 1; y < SIDE - 1; y += 2) {
      for (int x = 1; x < SIDE - 1; x++) {
        int at = y * SIDE + x;
        int dx = (pixels[at + 1] & 0xFF) - (pixels[at - 1] & 0xFF);
        int dy = (pixels[at + SIDE] & 0xFF) - (pixels[at - SIDE] & 0xFF);
        xx += dx * dx;
        yy += dy * dy;
        xy += dx * dy;
      }
    }
    double energy = xx + yy;
    if (energy == 0 || Math.hypot(xx - yy, 2 * xy) < MIN_COHERENCE * energy) {
      return OptionalDouble.empty();
    }
    return firstPeak(signature(pixels, Math.atan2(2 * xy, xx - yy) / 2));
  }

  /** Gray levels across the ridges, each the mean of a line along them; their own mean removed. */
  private static double[] signature(byte[] pixels, double across) {
    double cos = Math.cos(across);
    double sin = Math.sin(across);
    double[] signature = new double[SAMPLES];
    double mean = 0;
    for (int i = 0; i < SAMPLES; i++) {
      double x0 = SIDE / 2.0 + (i - REACH) * cos;
      double y0 = SIDE / 2.0 + (i - REACH) * sin;
      double sum = 0;
      for (int along = -ALONG; along <= ALONG; along++) {
        sum += at(pixels, x0 - along * sin, y0 + along * cos);
      }
      signature[i] = sum;
      mean += sum / SAMPLES;
    }
    for (int i = 0; i < SAMPLES; i++) {
      signature[i] -= mean;
    }
    return signature;
  }

  /** Between pixels by bilinear interpolation; every point of the signature lies well inside. */
  private static double at(byte[] pixels, double x, double y) {
    int left = (int) x;
    int top = (int) y;
    double right = x - left;
    double lower = y - top;
    int at = top * SIDE + left;
    double above = (pixels[at] & 0xFF) * (1 - right) + (pixels[at + 1] & 0xFF) * right;
    double below =
        (pixels[at + SIDE] & 0xFF) * (1 - right) + (pixels[at + SIDE + 1] & 0xFF) * right;
    return above * (1 - lower) + below * lower;
  }

  /** The first lag, once the correlation was negative, at which it is high again. */
  private static OptionalDouble firstPeak(double[] signature) {
    double[] correlation = new double[MAX_PERIOD + 2];
    for (int lag = 0; lag < correlation.length; lag++) {
      for (int i = lag; i < SAMPLES; i++) {
        correlation[lag] += signature[i] * signature[i - lag];
      }
      correlation[lag] /= SAMPLES - lag;
    }
    int lag = 1;
    while (lag <= MAX_PERIOD && correlation[lag] >= 0) {
      lag++;
    }
    for (lag = Math.max(lag, MIN_PERIOD); lag <= MAX_PERIOD; lag++) {
      double before = correlation[lag - 1];
      double here = correlation[lag];
      double after = correlation[lag + 1];
      if (here >= before && here > after && here >= MIN_CORRELATION * correlation[0]) {
        return OptionalDouble.of(lag + (before - after) / (2 * (before - 2 * here + after)));
      }
    }
    return OptionalDouble.empty();
  }
}
