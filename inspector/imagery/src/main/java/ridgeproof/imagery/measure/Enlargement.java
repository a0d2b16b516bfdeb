package ridgeproof.imagery.measure;

import ridgeproof.imagery.GrayImage;

/**
 * Signs that an image was scanned at half its resolution and enlarged. Every second pixel of such
 * an image lies between two that were scanned, so that steps between neighbors differ in strength
 * by turns (Gallagher 2005; Popescu and Farid 2005, from memory), and there is hardly any detail
 * finer than half the resolution can show.
 *
 * @param evenness variance of the steps from even to odd pixels against that from odd to even, the
 *     smaller over the larger, in the direction in which they are more alike; 1 for a scan
 * @param fineDetail power above half the band against that below it, over the print; 1 where there
 *     is no print
 */
public record Enlargement(double evenness, double fineDetail) {

  private static final int SIDE = 64;
  private static final int STEP = 4;
  private static final int SKIPPED = 3;
  private static final double MIN_VARIANCE = 900;

  /** Cycles for each 64 pixels: what a scan at half the resolution cannot have. */
  private static final int FINE = 18;

  private static final int COARSE = 3;
  private static final int HALF_BAND = 16;
  private static final int BAND = SIDE / 2;
  private static final double[][] COSINES = waves(0);
  private static final double[][] SINES = waves(-Math.PI / 2);

  private interface Lines {
    int grayAt(int along, int line);
  }

  static Enlargement of(GrayImage image) {
    double across = evenness(image.width(), image.height(), image::grayAt);
    double down =
        evenness(image.height(), image.width(), (along, line) -> image.grayAt(line, along));
    return new Enlargement(Math.max(across, down), fineDetail(image));
  }

  private static double evenness(int length, int lines, Lines gray) {
    double[] steps = new double[2];
    for (int line = 0; line < lines; line += SKIPPED) {
      for (int along = 0; along + 1 < length; along++) {
        int step = gray.grayAt(along + 1, line) - gray.grayAt(along, line);
        steps[along & 1] += step * step;
      }
    }
    double most = Math.max(steps[0], steps[1]);
    return most == 0 ? 1 : Math.min(steps[0], steps[1]) / most;
  }

  private static double fineDetail(GrayImage image) {
    double[] power = new double[BAND];
    for (int top = 0; top + SIDE <= image.height(); top += SIDE) {
      for (int left = 0; left + SIDE <= image.width(); left += SIDE) {
        add(image, left, top, power);
      }
    }
    double fine = sum(power, FINE, BAND);
    double coarse = sum(power, COARSE, HALF_BAND);
    return coarse == 0 ? 1 : fine / coarse;
  }

  private static double sum(double[] power, int from, int to) {
    double sum = 0;
    for (int k = from; k < to; k++) {
      sum += power[k];
    }
    return sum;
  }

  private static void add(GrayImage image, int left, int top, double[] power) {
    double mean = 0;
    double squares = 0;
    int count = SIDE * SIDE / 4;
    for (int y = 0; y < SIDE; y += 2) {
      for (int x = 0; x < SIDE; x += 2) {
        int gray = image.grayAt(left + x, top + y);
        mean += (double) gray / count;
        squares += (double) gray * gray / count;
      }
    }
    if (squares - mean * mean < MIN_VARIANCE) {
      return;
    }
    double[] row = new double[SIDE];
    double[] column = new double[SIDE];
    for (int line = 0; line < SIDE; line += 2 * STEP) {
      for (int i = 0; i < SIDE; i++) {
        row[i] = image.grayAt(left + i, top + line) - mean;
        column[i] = image.grayAt(left + line, top + i) - mean;
      }
      for (int k = COARSE; k < BAND; k++) {
        power[k] += power(row, k) + power(column, k);
      }
    }
  }

  private static double power(double[] line, int k) {
    double real = 0;
    double imaginary = 0;
    for (int i = 0; i < SIDE; i++) {
      real += line[i] * COSINES[k][i];
      imaginary += line[i] * SINES[k][i];
    }
    return real * real + imaginary * imaginary;
  }

  private static double[][] waves(double phase) {
    double[][] waves = new double[BAND][SIDE];
    for (int k = 0; k < BAND; k++) {
      for (int i = 0; i < SIDE; i++) {
        double window = 0.5 - 0.5 * Math.cos(2 * Math.PI * (i + 0.5) / SIDE);
        waves[k][i] = window * Math.cos(2 * Math.PI * k * i / SIDE + phase);
      }
    }
    return waves;
  }
}
