package ridgeproof.imagery.codec;

import java.awt.image.BufferedImage;
import java.awt.image.ColorModel;
import java.awt.image.IndexColorModel;
import java.awt.image.Raster;
import ridgeproof.imagery.GrayImage;

/** Turns the samples of a library's image to 8-bit gray levels, leaving gray ones as stored. */
final class GrayConverter {

  private GrayConverter() {}

  /**
   * Gray samples are taken without any colour management; colour becomes luminance (weights of
   * ITU-R BT.601, which JFIF uses); alpha is left out.
   */
  static GrayImage of(BufferedImage image) {
    Raster raster = image.getRaster();
    int width = raster.getWidth();
    int height = raster.getHeight();
    byte[] pixels = new byte[Math.multiplyExact(width, height)];
    ColorModel model = image.getColorModel();
    if (model instanceof IndexColorModel palette) {
      indexed(raster, palette, pixels);
    } else if (raster.getNumBands() >= 3) {
      colour(raster, model.getComponentSize(0), pixels);
    } else {
      gray(raster, model.getComponentSize(0), pixels);
    }
    return GrayImage.owning(width, height, pixels);
  }

  private static void indexed(Raster raster, IndexColorModel palette, byte[] pixels) {
    byte[] levels = new byte[palette.getMapSize()];
    for (int i = 0; i < levels.length; i++) {
      levels[i] = (byte) luminance(palette.getRed(i), palette.getGreen(i), palette.getBlue(i));
    }
    int width = raster.getWidth();
    int[] row = new int[width];
    for (int y = 0; y < raster.getHeight(); y++) {
      samples(raster, y, 0, row);
      for (int x = 0; x < width; x++) {
        pixels[y * width + x] = levels[row[x]];
      }
    }
  }

  private static void colour(Raster raster, int bits, byte[] pixels) {
    int width = raster.getWidth();
    int[] red = new int[width];
    int[] green = new int[width];
    int[] blue = new int[width];
    for (int y = 0; y < raster.getHeight(); y++) {
      samples(raster, y, 0, red);
      samples(raster, y, 1, green);
      samples(raster, y, 2, blue);
      for (int x = 0; x < width; x++) {
        pixels[y * width + x] =
            (byte) luminance(level(red[x], bits), level(green[x], bits), level(blue[x], bits));
      }
    }
  }

  private static void gray(Raster raster, int bits, byte[] pixels) {
    int width = raster.getWidth();
    int[] row = new int[width];
    for (int y = 0; y < raster.getHeight(); y++) {
      samples(raster, y, 0, row);
      for (int x = 0; x < width; x++) {
        pixels[y * width + x] = (byte) level(row[x], bits);
      }
    }
  }

  private static void samples(Raster raster, int y, int band, int[] row) {
    raster.getSamples(raster.getMinX(), raster.getMinY() + y, row.length, 1, band, row);
  }

  /** A sample of some bits on the scale from 0 to 255. */
  static int level(int sample, int bits) {
    if (bits == 8) {
      return sample;
    }
    long most = (1L << bits) - 1;
    return (int) ((sample * 255L + most / 2) / most);
  }

  /** Rounded, in thousandths as BT.601 gives them. */
  static int luminance(int red, int green, int blue) {
    return (299 * red + 587 * green + 114 * blue + 500) / 1000;
  }
}
