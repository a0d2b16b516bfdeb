package ridgeproof.imagery.wsq;

import java.util.Random;
import ridgeproof.imagery.GrayImage;

/** Made-up images and measures of how near two images are. */
public final class TestImages {

  public enum Content {
    NOISE,
    GRADIENT,
    RIDGES,
    BLANK
  }

  private TestImages() {}

  public static GrayImage of(Content content, int width, int height, long seed) {
    Random random = new Random(seed);
    byte[] pixels = new byte[width * height];
    double wave = 0.4 + 0.4 * random.nextDouble();
    double angle = Math.PI * random.nextDouble();
    double bend = 0.002 * random.nextDouble();
    int blank = random.nextInt(256);
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        double across = x * Math.cos(angle) + y * Math.sin(angle);
        double along = y * Math.cos(angle) - x * Math.sin(angle);
        pixels[y * width + x] =
            (byte)
                switch (content) {
                  case NOISE -> random.nextInt(256);
                  case GRADIENT -> (int) (255.0 * (x + y) / Math.max(1, width + height - 2));
                  case RIDGES -> (int) (128 + 90 * Math.sin(wave * across + bend * along));
                  case BLANK -> blank;
                };
      }
    }
    return GrayImage.owning(width, height, pixels);
  }

  public static int largestDifference(byte[] one, byte[] other) {
    int largest = 0;
    for (int i = 0; i < one.length; i++) {
      largest = Math.max(largest, Math.abs((one[i] & 0xFF) - (other[i] & 0xFF)));
    }
    return largest;
  }

  /** The largest difference of pixels that are at least so many pixels away from the borders. */
  static int largestDifferenceInside(GrayImage image, byte[] other, int border) {
    int largest = 0;
    for (int y = border; y < image.height() - border; y++) {
      for (int x = border; x < image.width() - border; x++) {
        int level = other[y * image.width() + x] & 0xFF;
        largest = Math.max(largest, Math.abs(image.grayAt(x, y) - level));
      }
    }
    return largest;
  }

  static int differences(byte[] one, byte[] other) {
    int count = 0;
    for (int i = 0; i < one.length; i++) {
      count += one[i] == other[i] ? 0 : 1;
    }
    return count;
  }

  /** Peak signal-to-noise ratio in dB; infinite for equal images. */
  static double psnr(byte[] one, byte[] other) {
    double squares = 0;
    for (int i = 0; i < one.length; i++) {
      double difference = (one[i] & 0xFF) - (other[i] & 0xFF);
      squares += difference * difference;
    }
    return 10 * Math.log10(255.0 * 255.0 * one.length / squares);
  }
}
