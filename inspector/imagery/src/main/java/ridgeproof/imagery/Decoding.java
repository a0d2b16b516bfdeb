package ridgeproof.imagery;

import java.util.List;
import java.util.Optional;

/**
 * What decoding an image gave.
 *
 * @param image 8-bit gray pixels (colour is turned to gray by its luminance), where there are any
 * @param defects what was wrong on the way
 */
public record Decoding(Optional<GrayImage> image, List<ImageDefect> defects) {

  public Decoding {
    defects = List.copyOf(defects);
  }

  public static Decoding failed(ImageDefect defect) {
    return new Decoding(Optional.empty(), List.of(defect));
  }
}
