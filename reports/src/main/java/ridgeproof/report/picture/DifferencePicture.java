package ridgeproof.report.picture;

import java.util.Optional;
import ridgeproof.imagery.GrayImage;

/** Where two images of one size differ: the darker, the more. */
public final class DifferencePicture {

  private static final int WHITE = 255;

  private DifferencePicture() {}

  /** White where nothing differs and black at the largest difference; empty for other sizes. */
  public static Optional<GrayImage> of(GrayImage first, GrayImage second) {
    if (first.width() != second.width() || first.height() != second.height()) {
      return Optional.empty();
    }
    byte[] left = first.toArray();
    byte[] right = second.toArray();
    int largest = 1;
    for (int i = 0; i < left.length; i++) {
      int difference = Math.abs((left[i] & 0xFF) - (right[i] & 0xFF));
      largest = Math.max(largest, difference);
      left[i] = (byte) difference;
    }
    for (int i = 0; i < left.length; i++) {
      left[i] = (byte) (WHITE - (left[i] & 0xFF) * WHITE / largest);
    }
    return Optional.of(GrayImage.owning(first.width(), first.height(), left));
  }
}
