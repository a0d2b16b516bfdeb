package ridgeproof.corpus.impression;

import java.util.Arrays;
import ridgeproof.corpus.finger.SeededRandom;
import ridgeproof.corpus.finger.TrigTables;
import ridgeproof.imagery.GrayImage;

/** The image under work: a bare platen on which fingers leave their marks. */
final class Platen {

  private final int width;
  private final int height;
  private byte[] gray;

  Platen(FrameSize frame, CaptureParameters c, SeededRandom dice) {
    this.width = frame.width();
    this.height = frame.height();
    this.gray = new byte[width * height];
    double acrossRise = dice.around(0, 3);
    double downRise = dice.around(0, 3);
    int[] noise = noiseLevels(c.noise);
    for (int y = 0; y < height; y++) {
      double level = c.paper + downRise * (2.0 * y / height - 1);
      for (int x = 0; x < width; x += 8) {
        int base = (int) (16 * (level + acrossRise * (2.0 * x / width - 1)));
        long bits = dice.next();
        int last = Math.min(width, x + 8);
        for (int k = x; k < last; k++, bits >>>= 8) {
          int value = (base + noise[(int) bits & 0xFF]) >> 4;
          gray[y * width + k] = (byte) Math.min(255, value);
        }
      }
    }
  }

  /** Sixteenths of gray levels, triangularly distributed, for each value of a random byte. */
  private static int[] noiseLevels(double largest) {
    int[] levels = new int[256];
    for (int i = 0; i < 256; i++) {
      int triangular = (i & 15) + (i >> 4) - 15;
      levels[i] = (int) Math.round(16 * largest * triangular / 15);
    }
    return levels;
  }

  int width() {
    return width;
  }

  int height() {
    return height;
  }

  /** The pixels themselves, for marks to be made on. */
  byte[] pixels() {
    return gray;
  }

  /** What befalls the image as a whole, after all fingers have left their marks. */
  GrayImage finish(CaptureParameters c, int ppi, SeededRandom dice) {
    if (c.smearPx > 0) {
      smear(c.smearPx * ppi / 500, c.smearHeading);
    }
    if (c.blurSigmaPx > 0) {
      blur(c.blurSigmaPx * ppi / 500);
    }
    if (c.contrast < 1) {
      flatten(c.contrast, c.paper - 45, c.noise, dice);
    }
    return GrayImage.owning(width, height, gray);
  }

  /** Averages along a line that grows longer from the top of the image to its bottom. */
  private void smear(double length, double heading) {
    byte[] from = gray;
    byte[] to = new byte[from.length];
    int samples = 9;
    int[] offsets = new int[samples];
    for (int y = 0; y < height; y++) {
      double reach = length * (0.15 + 0.85 * y / height) / (samples - 1);
      for (int x = 0; x < width; x++) {
        int sum = 0;
        for (int k = 0; k < samples; k++) {
          int across = (int) Math.rint(reach * (k - samples / 2) * TrigTables.cos((float) heading));
          int down = (int) Math.rint(reach * (k - samples / 2) * TrigTables.sin((float) heading));
          int sx = Math.max(0, Math.min(width - 1, x + across));
          int sy = Math.max(0, Math.min(height - 1, y + down));
          offsets[k] = sy * width + sx;
          sum += from[offsets[k]] & 0xFF;
        }
        to[y * width + x] = (byte) (sum / samples);
      }
    }
    gray = to;
  }

  private void blur(double sigma) {
    int reach = (int) Math.ceil(2.6 * sigma);
    float[] kernel = new float[2 * reach + 1];
    float sum = 0;
    for (int i = 0; i < kernel.length; i++) {
      double t = (i - reach) / sigma;
      kernel[i] = (float) StrictMath.exp(-0.5 * t * t);
      sum += kernel[i];
    }
    for (int i = 0; i < kernel.length; i++) {
      kernel[i] /= sum;
    }
    float[] rows = new float[gray.length];
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        float value = 0;
        for (int k = -reach; k <= reach; k++) {
          int sx = Math.max(0, Math.min(width - 1, x + k));
          value += kernel[k + reach] * (gray[y * width + sx] & 0xFF);
        }
        rows[y * width + x] = value;
      }
    }
    float[] line = new float[width];
    for (int y = 0; y < height; y++) {
      Arrays.fill(line, 0.5f);
      for (int k = -reach; k <= reach; k++) {
        int at = Math.max(0, Math.min(height - 1, y + k)) * width;
        float share = kernel[k + reach];
        for (int x = 0; x < width; x++) {
          line[x] += share * rows[at + x];
        }
      }
      for (int x = 0; x < width; x++) {
        gray[y * width + x] = (byte) line[x];
      }
    }
  }

  private void flatten(double contrast, double middle, double noise, SeededRandom dice) {
    int[] levels = noiseLevels(noise * (1 - contrast) * 0.5);
    for (int i = 0; i < gray.length; i++) {
      double value = middle + ((gray[i] & 0xFF) - middle) * contrast;
      double grain = levels[(int) dice.next() & 0xFF] / 16.0;
      gray[i] = (byte) Math.max(0, Math.min(255, Math.rint(value + grain)));
    }
  }
}
