package ridgeproof.testing;

import java.io.ByteArrayOutputStream;

/** Writes a lossless JPEG (ITU-T T.81 Annex H, predictor 1) to test decoders with. */
public final class LosslessJpeg {

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private int buffer;
  private int bits;

  private final int width;
  private final int height;
  private final byte[] pixels;

  private LosslessJpeg(int width, int height, byte[] pixels) {
    this.width = width;
    this.height = height;
    this.pixels = pixels;
  }

  /**
   * Encodes gray pixels.
   *
   * @param tableClass how the Huffman table is marked: 0, or 1 as an old encoder does
   */
  public static byte[] encode(int width, int height, byte[] pixels, int tableClass) {
    return new LosslessJpeg(width, height, pixels).write(tableClass);
  }

  private byte[] write(int tableClass) {
    bytes(0xFF, 0xD8);
    // JFIF: 500 pixels for each inch.
    bytes(0xFF, 0xE0, 0, 16, 'J', 'F', 'I', 'F', 0, 1, 2, 1, 500 >> 8, 500 & 0xFF, 500 >> 8);
    bytes(500 & 0xFF, 0, 0);
    bytes(0xFF, 0xC3, 0, 11, 8, height >> 8, height & 0xFF);
    bytes(width >> 8, width & 0xFF, 1, 1, 0x11, 0);
    // Nine categories with codes of four bits each.
    bytes(0xFF, 0xC4, 0, 19 + 9, tableClass << 4, 0, 0, 0, 9, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0);
    bytes(0, 1, 2, 3, 4, 5, 6, 7, 8);
    bytes(0xFF, 0xDA, 0, 8, 1, 1, 0, 1, 0, 0);
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        difference(grayAt(x, y) - prediction(x, y));
      }
    }
    if (bits > 0) {
      put((1 << (8 - bits)) - 1, 8 - bits);
    }
    bytes(0xFF, 0xD9);
    return out.toByteArray();
  }

  private int grayAt(int x, int y) {
    return pixels[y * width + x] & 0xFF;
  }

  private int prediction(int x, int y) {
    if (x > 0) {
      return grayAt(x - 1, y);
    }
    return y > 0 ? grayAt(x, y - 1) : 128;
  }

  private void difference(int value) {
    int category = 32 - Integer.numberOfLeadingZeros(Math.abs(value));
    put(category, 4);
    if (category > 0) {
      put(value > 0 ? value : value + (1 << category) - 1, category);
    }
  }

  private void put(int value, int count) {
    for (int i = count - 1; i >= 0; i--) {
      buffer = buffer << 1 | (value >> i & 1);
      if (++bits == 8) {
        out.write(buffer);
        if ((buffer & 0xFF) == 0xFF) {
          out.write(0);
        }
        buffer = 0;
        bits = 0;
      }
    }
  }

  private void bytes(int... values) {
    for (int value : values) {
      out.write(value);
    }
  }
}
