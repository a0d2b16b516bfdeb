package ridgeproof.corpus.finger;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import ridgeproof.imagery.GrayImage;

/** What the tests measure on images. */
public final class PixelProbe {

  private PixelProbe() {}

  public static String digest(GrayImage image) {
    return digest(image.toArray());
  }

  static String digest(byte[] bytes) {
    try {
      byte[] sum = MessageDigest.getInstance("SHA-256").digest(bytes);
      return HexFormat.of().formatHex(sum, 0, 8);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  public static double mean(GrayImage image) {
    double sum = 0;
    for (byte pixel : image.toArray()) {
      sum += pixel & 0xFF;
    }
    return sum / (image.width() * (double) image.height());
  }

  public static double deviation(GrayImage image) {
    double mean = mean(image);
    double sum = 0;
    for (byte pixel : image.toArray()) {
      sum += ((pixel & 0xFF) - mean) * ((pixel & 0xFF) - mean);
    }
    return Math.sqrt(sum / (image.width() * (double) image.height()));
  }

  /** Mean absolute difference of neighbouring pixels: falls when detail is lost. */
  public static double sharpness(GrayImage image) {
    double sum = 0;
    for (int y = 1; y < image.height(); y++) {
      for (int x = 1; x < image.width(); x++) {
        sum += Math.abs(image.grayAt(x, y) - image.grayAt(x - 1, y));
        sum += Math.abs(image.grayAt(x, y) - image.grayAt(x, y - 1));
      }
    }
    return sum / (image.width() * (double) image.height());
  }

  public static GrayImage crop(GrayImage image, int left, int top, int right, int bottom) {
    int width = right - left + 1;
    int height = bottom - top + 1;
    byte[] pixels = new byte[width * height];
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        pixels[y * width + x] = (byte) image.grayAt(left + x, top + y);
      }
    }
    return GrayImage.owning(width, height, pixels);
  }

  /** True where a pixel is darker than its neighbourhood of about two ridges: on a ridge. */
  public static boolean[] ridges(GrayImage image) {
    int width = image.width();
    int height = image.height();
    long[] sums = new long[(width + 1) * (height + 1)];
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        sums[(y + 1) * (width + 1) + x + 1] =
            image.grayAt(x, y)
                + sums[y * (width + 1) + x + 1]
                + sums[(y + 1) * (width + 1) + x]
                - sums[y * (width + 1) + x];
      }
    }
    boolean[] ridge = new boolean[width * height];
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        ridge[y * width + x] =
            average(sums, width, height, x, y, 1) < average(sums, width, height, x, y, 9);
      }
    }
    return ridge;
  }

  private static double average(long[] sums, int width, int height, int x, int y, int reach) {
    int left = Math.max(0, x - reach);
    int right = Math.min(width, x + reach + 1);
    int top = Math.max(0, y - reach);
    int bottom = Math.min(height, y + reach + 1);
    long sum =
        sums[bottom * (width + 1) + right]
            - sums[top * (width + 1) + right]
            - sums[bottom * (width + 1) + left]
            + sums[top * (width + 1) + left];
    return sum / (double) ((right - left) * (bottom - top));
  }

  /**
   * The mean distance from ridge to ridge: a wave crosses its mean level so often to the right and
   * downwards that the root of the sum of squares is two crossings to the period, whichever way the
   * ridges run.
   */
  public static double ridgePeriod(GrayImage image, TrueRidgeMask mask) {
    boolean[] ridge = ridges(image);
    int block = 32;
    double sum = 0;
    int blocks = 0;
    for (int top = 0; top + block < image.height(); top += block) {
      for (int left = 0; left + block < image.width(); left += block) {
        if (!inside(mask, left, top, block)) {
          continue;
        }
        int across = 0;
        int down = 0;
        for (int y = top; y < top + block; y++) {
          for (int x = left; x < left + block; x++) {
            int at = y * image.width() + x;
            across += ridge[at] != ridge[at + 1] ? 1 : 0;
            down += ridge[at] != ridge[at + image.width()] ? 1 : 0;
          }
        }
        sum += Math.sqrt(across * (double) across + down * (double) down) / (block * block);
        blocks++;
      }
    }
    return 2 * blocks / sum;
  }

  private static boolean inside(TrueRidgeMask mask, int left, int top, int side) {
    for (int y = top - 24; y <= top + side + 24; y += 8) {
      for (int x = left - 24; x <= left + side + 24; x += 8) {
        if (!mask.contains(x, y)) {
          return false;
        }
      }
    }
    return true;
  }
}
