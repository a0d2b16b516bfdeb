package ridgeproof.imagery.standin;

import java.util.Optional;
import java.util.function.Function;
import ridgeproof.imagery.GrayImage;

/** Makes a picture simpler until its coding without loss is short enough. */
final class Coarsened {

  private static final int COARSEST = 32;

  private Coarsened() {}

  /**
   * The first codestream that the encoder has room for, of pictures with fewer and fewer levels.
   */
  static Optional<byte[]> fitting(
      GrayImage picture, Function<GrayImage, Optional<byte[]>> encoder) {
    for (int step = 1; step <= COARSEST; step *= 2) {
      Optional<byte[]> bytes = encoder.apply(step == 1 ? picture : inSteps(picture, step));
      if (bytes.isPresent()) {
        return bytes;
      }
    }
    return Optional.empty();
  }

  private static GrayImage inSteps(GrayImage picture, int step) {
    byte[] pixels = picture.toArray();
    for (int i = 0; i < pixels.length; i++) {
      int gray = pixels[i] & 0xFF;
      pixels[i] = (byte) (gray - gray % step + step / 2);
    }
    return GrayImage.owning(picture.width(), picture.height(), pixels);
  }
}
