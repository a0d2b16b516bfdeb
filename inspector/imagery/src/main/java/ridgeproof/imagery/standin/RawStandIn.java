package ridgeproof.imagery.standin;

import java.util.Arrays;
import java.util.Optional;
import ridgeproof.imagery.GrayImage;

/** Another picture without coding, in the depth that the record states. */
final class RawStandIn {

  private static final int GRAY = 8;
  private static final int FINE_GRAY = 16;
  private static final int COLOR = 24;

  private RawStandIn() {}

  /** What follows the pixels shows nothing; empty where there is no room for all of them. */
  static Optional<byte[]> of(int room, int bitsPerPixel, GrayImage picture) {
    byte[] pixels =
        switch (bitsPerPixel) {
          case 1 -> bits(room, picture);
          case FINE_GRAY, COLOR -> repeated(picture, bitsPerPixel / GRAY);
          default -> picture.toArray();
        };
    return pixels.length > room ? Optional.empty() : Optional.of(Arrays.copyOf(pixels, room));
  }

  /** Each sample of a gray pixel has the same value, and so have both bytes of a fine one. */
  private static byte[] repeated(GrayImage picture, int times) {
    byte[] pixels = picture.toArray();
    byte[] samples = new byte[pixels.length * times];
    for (int i = 0; i < samples.length; i++) {
      samples[i] = pixels[i / times];
    }
    return samples;
  }

  /** 1 is black; rows begin on a whole byte unless only rows without padding fill the room. */
  private static byte[] bits(int room, GrayImage picture) {
    int whole = (picture.width() + 7) / 8 * 8;
    int packed = (int) (((long) picture.width() * picture.height() + 7) / 8);
    boolean padded = packed != room || whole / 8 * picture.height() == room;
    int row = padded ? whole : picture.width();
    byte[] bytes = new byte[(int) (((long) row * picture.height() + 7) / 8)];
    for (int y = 0; y < picture.height(); y++) {
      for (int x = 0; x < picture.width(); x++) {
        if (Bilevel.isBlack(picture, x, y)) {
          int bit = y * row + x;
          bytes[bit / 8] |= (byte) (0x80 >> bit % 8);
        }
      }
    }
    return bytes;
  }
}
