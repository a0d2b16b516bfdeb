package ridgeproof.ridges.map;

import ridgeproof.imagery.GrayImage;

/** Brings images to the 500 ppi that all lengths of the methods are given for. */
public final class WorkingResolution {

  public static final double PPI = 500;
  public static final double MM_PER_PIXEL = 25.4 / PPI;

  /** Below this ridges of a child (0.2 mm) have fewer than two pixels. */
  private static final double MIN_PPI = 240;

  private static final double MAX_PPI = 4800;
  private static final double SAME = 0.01;

  /** Memory for the working image stays bounded whatever resolution is claimed. */
  private static final long MAX_PIXELS = 64_000_000L;

  private WorkingResolution() {}

  static boolean isUsable(double ppi) {
    return ppi >= MIN_PPI && ppi <= MAX_PPI;
  }

  /** Pixels of the working image for one of the source; 1 when they are alike within 1 %. */
  static double scale(double ppi) {
    double scale = PPI / ppi;
    return Math.abs(scale - 1) <= SAME ? 1 : scale;
  }

  static boolean fits(GrayImage image, double ppi) {
    double scale = scale(ppi);
    return image.width() * scale * image.height() * scale <= MAX_PIXELS;
  }

  static byte[] pixels(GrayImage image, double ppi) {
    byte[] source = image.toArray();
    double scale = scale(ppi);
    if (scale == 1) {
      return source;
    }
    int width = length(image.width(), scale);
    int height = length(image.height(), scale);
    byte[] averaged = source;
    int sourceWidth = image.width();
    int sourceHeight = image.height();
    // Halving by averages first keeps the final interpolation free of aliases.
    while (sourceWidth >= 2 * width && sourceHeight >= 2 * height) {
      averaged = halve(averaged, sourceWidth, sourceHeight);
      sourceWidth /= 2;
      sourceHeight /= 2;
    }
    return interpolate(averaged, sourceWidth, sourceHeight, width, height);
  }

  static int length(int source, double scale) {
    return Math.max(1, (int) Math.round(source * scale));
  }

  private static byte[] halve(byte[] source, int width, int height) {
    int w = width / 2;
    int h = height / 2;
    byte[] half = new byte[w * h];
    for (int y = 0; y < h; y++) {
      for (int x = 0; x < w; x++) {
        int at = 2 * y * width + 2 * x;
        int sum =
            (source[at] & 0xFF)
                + (source[at + 1] & 0xFF)
                + (source[at + width] & 0xFF)
                + (source[at + width + 1] & 0xFF);
        half[y * w + x] = (byte) ((sum + 2) / 4);
      }
    }
    return half;
  }

  private static byte[] interpolate(byte[] source, int sw, int sh, int width, int height) {
    byte[] result = new byte[width * height];
    double stepX = (double) sw / width;
    double stepY = (double) sh / height;
    for (int y = 0; y < height; y++) {
      double sy = (y + 0.5) * stepY - 0.5;
      for (int x = 0; x < width; x++) {
        result[y * width + x] =
            (byte) Math.round(bilinear(source, sw, sh, (x + 0.5) * stepX - 0.5, sy));
      }
    }
    return result;
  }

  /** The gray level between pixels; beyond the edge the nearest pixel counts. */
  static double bilinear(byte[] source, int width, int height, double x, double y) {
    double cx = Math.max(0, Math.min(width - 1, x));
    double cy = Math.max(0, Math.min(height - 1, y));
    int x0 = (int) cx;
    int y0 = (int) cy;
    int x1 = Math.min(width - 1, x0 + 1);
    int y1 = Math.min(height - 1, y0 + 1);
    double fx = cx - x0;
    double fy = cy - y0;
    double top =
        (source[y0 * width + x0] & 0xFF) * (1 - fx) + (source[y0 * width + x1] & 0xFF) * fx;
    double low =
        (source[y1 * width + x0] & 0xFF) * (1 - fx) + (source[y1 * width + x1] & 0xFF) * fx;
    return top * (1 - fy) + low * fy;
  }
}
