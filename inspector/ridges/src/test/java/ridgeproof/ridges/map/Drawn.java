package ridgeproof.ridges.map;

import java.util.Arrays;
import java.util.Random;
import java.util.function.DoubleBinaryOperator;
import ridgeproof.imagery.GrayImage;

/** Images drawn for tests. */
public final class Drawn {

  public static final int PAPER = 225;

  private Drawn() {}

  public static GrayImage blank(int width, int height, int level) {
    byte[] pixels = new byte[width * height];
    Arrays.fill(pixels, (byte) level);
    return GrayImage.owning(width, height, pixels);
  }

  public static GrayImage noise(int width, int height, long seed) {
    byte[] pixels = new byte[width * height];
    new Random(seed).nextBytes(pixels);
    return GrayImage.owning(width, height, pixels);
  }

  /** Noise of the fineness of ridges. */
  public static GrayImage grain(int width, int height, long seed) {
    byte[] smooth = Smoothing.pixels(noise(width, height, seed).toArray(), width, height);
    for (int i = 0; i < smooth.length; i++) {
      smooth[i] = (byte) Math.max(0, Math.min(255, 128 + 4 * ((smooth[i] & 0xFF) - 128)));
    }
    return GrayImage.owning(width, height, smooth);
  }

  /** Parallel ridges in an ellipse on paper; degrees clockwise from the x axis as seen. */
  public static GrayImage stripes(
      int width, int height, double period, double degrees, double ridgeShare) {
    double nx = -Math.sin(Math.toRadians(degrees));
    double ny = Math.cos(Math.toRadians(degrees));
    byte[] pixels = new byte[width * height];
    double limit = Math.cos(Math.PI * ridgeShare);
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        double wave = Math.cos(2 * Math.PI * (x * nx + y * ny) / period);
        double soft = 1 / (1 + Math.exp(-4 * (wave - limit)));
        double gray = inEllipse(x, y, width, height) ? 210 - 150 * soft : PAPER;
        pixels[y * width + x] = (byte) Math.round(gray);
      }
    }
    return GrayImage.owning(width, height, pixels);
  }

  private static boolean inEllipse(int x, int y, int width, int height) {
    double dx = (x - width / 2.0) / (width * 0.45);
    double dy = (y - height / 2.0) / (height * 0.45);
    return dx * dx + dy * dy <= 1;
  }

  /**
   * A ridge pattern with singular points by the zero-pole model (Sherlock and Monro 1993), grown
   * from noise by oriented filters (Cappelli 2004).
   *
   * @param cores x, y pairs
   * @param deltas x, y pairs
   */
  public static GrayImage print(int width, int height, double[] cores, double[] deltas, long seed) {
    return grown(width, height, (x, y) -> zeroPole(x, y, cores, deltas), seed);
  }

  /** Ridges that rise in the middle. */
  public static GrayImage arch(int width, int height, long seed) {
    return grown(
        width,
        height,
        (x, y) ->
            -Math.toRadians(35)
                * Math.sin(2 * Math.PI * (width / 2.0 - x) / width)
                * Math.exp(-Math.pow((y - height * 0.55) / (height * 0.3), 2)),
        seed);
  }

  private static double zeroPole(double x, double y, double[] cores, double[] deltas) {
    double sum = 0;
    for (int i = 0; i < cores.length; i += 2) {
      sum += Math.atan2(y - cores[i + 1], x - cores[i]);
    }
    for (int i = 0; i < deltas.length; i += 2) {
      sum -= Math.atan2(y - deltas[i + 1], x - deltas[i]);
    }
    // With as many cores as deltas ridges far away lie level.
    return sum / 2 + (cores.length > deltas.length ? Math.PI / 4 : 0);
  }

  private static GrayImage grown(int width, int height, DoubleBinaryOperator direction, long seed) {
    float[] field = new float[width * height];
    Random random = new Random(seed);
    for (int i = 0; i < field.length; i++) {
      field[i] = random.nextFloat() - 0.5f;
    }
    float[][] kernels = kernels();
    for (int pass = 0; pass < 4; pass++) {
      field = filtered(field, width, height, direction, kernels);
    }
    byte[] pixels = new byte[width * height];
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        double gray = inEllipse(x, y, width, height) ? 140 - 75 * field[y * width + x] : PAPER;
        pixels[y * width + x] = (byte) Math.round(gray + 6 * random.nextGaussian());
      }
    }
    return GrayImage.owning(width, height, pixels);
  }

  private static final int REACH = 8;
  private static final int DIRECTIONS = 48;

  private static float[][] kernels() {
    float[][] kernels = new float[DIRECTIONS][(2 * REACH + 1) * (2 * REACH + 1)];
    for (int d = 0; d < DIRECTIONS; d++) {
      double angle = Math.PI * d / DIRECTIONS;
      int at = 0;
      for (int y = -REACH; y <= REACH; y++) {
        for (int x = -REACH; x <= REACH; x++) {
          double across = -x * Math.sin(angle) + y * Math.cos(angle);
          kernels[d][at++] =
              (float)
                  (Math.cos(2 * Math.PI * across / 9) * Math.exp(-(x * x + y * y) / (2 * 4.0 * 4)));
        }
      }
    }
    return kernels;
  }

  private static float[] filtered(
      float[] from, int width, int height, DoubleBinaryOperator direction, float[][] kernels) {
    float[] to = new float[from.length];
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        double turns = direction.applyAsDouble(x, y) / Math.PI;
        int d = (int) Math.round((turns - Math.floor(turns)) * DIRECTIONS) % DIRECTIONS;
        float sum = 0;
        int at = 0;
        for (int dy = -REACH; dy <= REACH; dy++) {
          int row = Math.max(0, Math.min(height - 1, y + dy)) * width;
          for (int dx = -REACH; dx <= REACH; dx++) {
            sum += kernels[d][at++] * from[row + Math.max(0, Math.min(width - 1, x + dx))];
          }
        }
        to[y * width + x] = (float) Math.tanh(sum);
      }
    }
    return to;
  }

  /** Lines of letters of the size printed on cards. */
  public static GrayImage text(int width, int height) {
    GrayImage paper = blank(width, height, PAPER);
    byte[] pixels = paper.toArray();
    int[][] strokes = {
      {0b11111, 0b10000, 0b10000, 0b11110, 0b10000, 0b10000, 0b11111},
      {0b10001, 0b10001, 0b10001, 0b11111, 0b10001, 0b10001, 0b10001},
      {0b11111, 0b00100, 0b00100, 0b00100, 0b00100, 0b00100, 0b00100},
      {0b10001, 0b11001, 0b10101, 0b10011, 0b10001, 0b10001, 0b10001},
      {0b10001, 0b10010, 0b10100, 0b11000, 0b10100, 0b10010, 0b10001}
    };
    int cell = 3;
    int next = 2;
    for (int y = 20; y + 8 * cell < height; y += 14 * cell) {
      for (int x = 20; x + 6 * cell < width; x += 8 * cell) {
        int[] glyph = strokes[next++ * 7 % strokes.length];
        for (int py = 0; py < 7 * cell; py++) {
          for (int px = 0; px < 5 * cell; px++) {
            boolean ink = (glyph[py / cell] >> (4 - px / cell) & 1) == 1;
            pixels[(y + py) * width + x + px] = (byte) (ink ? 40 : PAPER);
          }
        }
      }
    }
    return GrayImage.owning(width, height, pixels);
  }

  public static GrayImage inverted(GrayImage image) {
    byte[] pixels = image.toArray();
    for (int i = 0; i < pixels.length; i++) {
      pixels[i] = (byte) ~pixels[i];
    }
    return GrayImage.owning(image.width(), image.height(), pixels);
  }

  public static GrayImage mirrored(GrayImage image) {
    byte[] pixels = new byte[image.width() * image.height()];
    for (int y = 0; y < image.height(); y++) {
      for (int x = 0; x < image.width(); x++) {
        pixels[y * image.width() + x] = (byte) image.grayAt(image.width() - 1 - x, y);
      }
    }
    return GrayImage.owning(image.width(), image.height(), pixels);
  }

  /** Turned clockwise onto a canvas that holds all of it, white around. */
  public static GrayImage turned(GrayImage image, double degrees) {
    double cos = Math.abs(Math.cos(Math.toRadians(degrees)));
    double sin = Math.abs(Math.sin(Math.toRadians(degrees)));
    double w = image.width();
    double h = image.height();
    return new RotatedBox(w / 2, h / 2, w * cos + h * sin, w * sin + h * cos, -degrees).cut(image);
  }

  /** Images side by side, aligned at the given tops. */
  public static GrayImage sideBySide(int height, int[] tops, GrayImage... images) {
    int width = Arrays.stream(images).mapToInt(GrayImage::width).sum();
    byte[] pixels = blank(width, height, PAPER).toArray();
    int left = 0;
    for (int i = 0; i < images.length; i++) {
      for (int y = 0; y < images[i].height() && y + tops[i] < height; y++) {
        for (int x = 0; x < images[i].width(); x++) {
          pixels[(y + tops[i]) * width + left + x] = (byte) images[i].grayAt(x, y);
        }
      }
      left += images[i].width();
    }
    return GrayImage.owning(width, height, pixels);
  }
}
