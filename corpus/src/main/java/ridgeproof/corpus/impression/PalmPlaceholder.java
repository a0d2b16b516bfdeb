package ridgeproof.corpus.impression;

import ridgeproof.corpus.finger.MasterFinger;
import ridgeproof.corpus.finger.SeededRandom;
import ridgeproof.imagery.GrayImage;

/**
 * Something of the size and the texture of a palm print, for tests of records, sizes and codecs. It
 * is no palm: the ridges are those of one finger, mirrored again and again, without creases, deltas
 * or the flow of a palm.
 */
public final class PalmPlaceholder {

  private static final int PAPER = 244;
  private static final int INK = 70;
  private static final int MARGIN_PX = 60;

  private PalmPlaceholder() {}

  /** Fills a rounded area of the frame with the ridges of a finger, at 500 ppi. */
  public static GrayImage render(MasterFinger finger, FrameSize frame, long seed) {
    int width = frame.width();
    int height = frame.height();
    byte[] pixels = new byte[width * height];
    byte[] relief = finger.relief();
    int stride = finger.anatomy().canvasWidth();
    int left = stride / 6;
    int patchWidth = stride - 2 * left;
    int top = finger.anatomy().lengthPx() / 6;
    int patchHeight = finger.anatomy().lengthPx() * 2 / 3;
    SeededRandom dice = new SeededRandom(seed, 31);
    for (int y = 0; y < height; y++) {
      int row = (top + mirrored(y, patchHeight)) * stride + left;
      for (int x = 0; x < width; x++) {
        int noise = (int) (dice.next() >>> 61);
        int level = PAPER - noise;
        if (touches(x, y, width, height)) {
          int skin = relief[row + mirrored(x, patchWidth)];
          level -= Math.max(0, Math.min(PAPER - INK, (skin + 30) * 2));
        }
        pixels[y * width + x] = (byte) level;
      }
    }
    return GrayImage.owning(width, height, pixels);
  }

  private static int mirrored(int at, int length) {
    int within = at % (2 * length);
    return within < length ? within : 2 * length - 1 - within;
  }

  /** An ellipse of the fourth power: a rectangle with well rounded corners. */
  private static boolean touches(int x, int y, int width, int height) {
    double across = (2.0 * x - width) / (width - 2.0 * MARGIN_PX);
    double down = (2.0 * y - height) / (height - 2.0 * MARGIN_PX);
    double a = across * across;
    double d = down * down;
    return a * a + d * d < 1;
  }
}
