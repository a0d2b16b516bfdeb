package ridgeproof.imagery.standin;

import java.awt.image.BufferedImage;
import java.util.Optional;
import java.util.function.Function;
import ridgeproof.imagery.GrayImage;

/** A picture of black and white, whose coding is the shorter the larger its blocks are. */
final class Bilevel {

  private static final int MIDDLE = 128;
  private static final int COARSEST = 16;

  private Bilevel() {}

  static boolean isBlack(GrayImage picture, int x, int y) {
    return picture.grayAt(x, y) < MIDDLE;
  }

  /**
   * The first codestream that the encoder has room for, of pictures in larger and larger blocks.
   */
  static Optional<byte[]> fitting(
      GrayImage picture, Function<GrayImage, Optional<byte[]>> encoder) {
    for (int block = 1; block <= COARSEST; block *= 2) {
      Optional<byte[]> bytes = encoder.apply(block == 1 ? picture : inBlocks(picture, block));
      if (bytes.isPresent()) {
        return bytes;
      }
    }
    return Optional.empty();
  }

  private static GrayImage inBlocks(GrayImage picture, int block) {
    byte[] pixels = new byte[picture.width() * picture.height()];
    for (int y = 0; y < picture.height(); y++) {
      for (int x = 0; x < picture.width(); x++) {
        pixels[y * picture.width() + x] = (byte) picture.grayAt(x - x % block, y - y % block);
      }
    }
    return GrayImage.owning(picture.width(), picture.height(), pixels);
  }

  static BufferedImage buffered(GrayImage picture) {
    BufferedImage copy =
        new BufferedImage(picture.width(), picture.height(), BufferedImage.TYPE_BYTE_BINARY);
    for (int y = 0; y < picture.height(); y++) {
      for (int x = 0; x < picture.width(); x++) {
        copy.getRaster().setSample(x, y, 0, isBlack(picture, x, y) ? 0 : 1);
      }
    }
    return copy;
  }
}
