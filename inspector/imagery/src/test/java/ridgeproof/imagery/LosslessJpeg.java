package ridgeproof.imagery;

import java.io.ByteArrayOutputStream;

/** Writes a lossless JPEG (ITU-T T.81 Annex H, predictor 1) to test decoders with. */
final class LosslessJpeg {

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private int buffer;
  private int bits;

  private LosslessJpeg() {}

  static byte[] encode(GrayImage image) {
    return new LosslessJpeg().write(image);
  }

  private byte[] write(GrayImage image) {
    bytes(0xFF, 0xD8);
    // JFIF: 500 pixels for each inch.
    bytes(0xFF, 0xE0, 0, 16, 'J', 'F', 'I', 'F', 0, 1, 2, 1, 500 >> 8, 500 & 0xFF, 500 >> 8);
    bytes(500 & 0xFF, 0, 0);
    bytes(0xFF, 0xC3, 0, 11, 8, image.height() >> 8, image.height() & 0xFF);
    bytes(image.width() >> 8, image.width() & 0xFF, 1, 1, 0x11, 0);
    // Nine categories with codes of four bits each.
    bytes(0xFF, 0xC4, 0, 19 + 9, 0, 0, 0, 0, 9, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0);
    bytes(0, 1, 2, 3, 4, 5, 6, 7, 8);
    bytes(0xFF, 0xDA, 0, 8, 1, 1, 0, 1, 0, 0);
    for (int y = 0; y < image.height(); y++) {
      for (int x = 0; x < image.width(); x++) {
        difference(image.grayAt(x, y) - prediction(image, x, y));
      }
    }
    if (bits > 0) {
      put((1 << (8 - bits)) - 1, 8 - bits);
    }
    bytes(0xFF, 0xD9);
    return out.toByteArray();
  }

  private static int prediction(GrayImage image, int x, int y) {
    if (x > 0) {
      return image.grayAt(x - 1, y);
    }
    return y > 0 ? image.grayAt(x, y - 1) : 128;
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
