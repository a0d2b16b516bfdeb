package ridgeproof.report.picture;

import java.util.Base64;
import java.util.Optional;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.codec.PngWriter;

/** A small copy of an image, as a data address. */
public final class Thumbnail {

  /** Enough for a sharp print of a finger at its true size. */
  private static final int WIDEST_PIXELS = 480;

  private Thumbnail() {}

  public static String of(GrayImage image) {
    return of(image, WIDEST_PIXELS);
  }

  /**
   * @param most pixels of the longer side
   */
  public static String of(GrayImage image, int most) {
    int factor = Math.max(1, (Math.max(image.width(), image.height()) + most - 1) / most);
    byte[] png = PngWriter.encode(reduced(image, factor), Optional.empty());
    return "data:image/png;base64," + Base64.getEncoder().encodeToString(png);
  }

  /** Each pixel the mean of a square of pixels; the squares at the right and below may be cut. */
  private static GrayImage reduced(GrayImage image, int factor) {
    int width = (image.width() + factor - 1) / factor;
    int height = (image.height() + factor - 1) / factor;
    byte[] pixels = new byte[width * height];
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        pixels[y * width + x] = (byte) mean(image, x * factor, y * factor, factor);
      }
    }
    return GrayImage.owning(width, height, pixels);
  }

  private static int mean(GrayImage image, int left, int top, int factor) {
    int right = Math.min(left + factor, image.width());
    int bottom = Math.min(top + factor, image.height());
    long sum = 0;
    for (int y = top; y < bottom; y++) {
      for (int x = left; x < right; x++) {
        sum += image.grayAt(x, y);
      }
    }
    int count = (right - left) * (bottom - top);
    return (int) ((sum + count / 2) / count);
  }
}
