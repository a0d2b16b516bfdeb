package ridgeproof.imagery.standin;

import java.io.ByteArrayOutputStream;
import java.util.Optional;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.ImageHeader;
import ridgeproof.transaction.record.ByteSource;

/** Another picture as lossless JPEG (ITU-T T.81 Annex H): each sample by the one to its left. */
final class LosslessJpegStandIn {

  private static final int SOI_BYTES = 2;
  private static final int COMMENT = 0xFE;
  private static final int SHORTEST = 4;
  private static final int BITS = 8;

  /** Code words of each length, for differences of 0 to 8 bits in this order (as in T.81 K.3). */
  private static final int[] LENGTHS = {0, 1, 5, 1, 1, 1, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0};

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final int[] words = new int[BITS + 1];
  private final int[] lengths = new int[BITS + 1];
  private int buffer;
  private int buffered;

  private LosslessJpegStandIn() {
    int code = 0;
    int symbol = 0;
    for (int length = 1; length <= LENGTHS.length; length++) {
      for (int i = 0; i < LENGTHS[length - 1]; i++) {
        words[symbol] = code++;
        lengths[symbol++] = length;
      }
      code <<= 1;
    }
  }

  static Optional<byte[]> of(ByteSource image, ImageHeader header, GrayImage picture) {
    int room = image.length();
    if (header.components() != 1 || header.bitsPerPixel() != BITS) {
      return Optional.empty();
    }
    return Coarsened.fitting(
        picture,
        simple -> {
          byte[] jfif = JpegStandIn.jfif(image);
          byte[] bytes =
              SegmentPadding.inserted(new LosslessJpegStandIn().encoded(simple), SOI_BYTES, jfif);
          int spare = room - bytes.length;
          return SegmentPadding.fills(spare, SHORTEST)
              ? Optional.of(
                  SegmentPadding.inserted(
                      bytes, SOI_BYTES, SegmentPadding.of(COMMENT, SHORTEST, spare)))
              : Optional.empty();
        });
  }

  private byte[] encoded(GrayImage image) {
    bytes(0xFF, 0xD8, 0xFF, 0xC4, 0, 3 + LENGTHS.length + BITS + 1, 0);
    bytes(LENGTHS);
    for (int symbol = 0; symbol <= BITS; symbol++) {
      out.write(symbol);
    }
    int width = image.width();
    int height = image.height();
    bytes(0xFF, 0xC3, 0, 11, BITS, height >> 8, height, width >> 8, width, 1, 1, 0x11, 0);
    bytes(0xFF, 0xDA, 0, 8, 1, 1, 0, 1, 0, 0);
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        int middle = 1 << BITS - 1;
        int beside = x > 0 ? image.grayAt(x - 1, y) : y > 0 ? image.grayAt(0, y - 1) : middle;
        difference(image.grayAt(x, y) - beside);
      }
    }
    if (buffered > 0) {
      bits((1 << 8 - buffered) - 1, 8 - buffered);
    }
    bytes(0xFF, 0xD9);
    return out.toByteArray();
  }

  private void bytes(int... values) {
    for (int value : values) {
      out.write(value);
    }
  }

  private void difference(int value) {
    int size = Integer.SIZE - Integer.numberOfLeadingZeros(Math.abs(value));
    bits(words[size], lengths[size]);
    bits(value < 0 ? value - 1 & (1 << size) - 1 : value, size);
  }

  private void bits(int value, int count) {
    for (int i = count - 1; i >= 0; i--) {
      buffer = buffer << 1 | value >> i & 1;
      if (++buffered == 8) {
        out.write(buffer);
        if (buffer == 0xFF) {
          out.write(0);
        }
        buffer = 0;
        buffered = 0;
      }
    }
  }
}
