package ridgeproof.report.picture;

import java.util.Optional;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.PixelDensity;
import ridgeproof.ridges.matching.PrintAlignment;

/** Two captures of one finger, the second laid on the first by the minutiae that both have. */
public final class AlignedPictures {

  private static final int PAPER = 255;

  /** Single fingers are small on a page. */
  private static final double MAX_ENLARGED = 2.5;

  /** Around the minutiae that both have, where the image shows other fingers too. */
  private static final double RIM_MM = 5;

  private final GrayImage first;
  private final GrayImage second;
  private final PrintAlignment lies;
  private final double ppi;

  private AlignedPictures(GrayImage first, GrayImage second, PrintAlignment lies, double ppi) {
    this.first = first;
    this.second = second;
    this.lies = lies;
    this.ppi = ppi;
  }

  /**
   * Both captures and their difference.
   *
   * @param image the first
   * @param alone whether it shows this finger alone, so that all of it is drawn
   * @param lies where the second lies on the first
   */
  public static PicturePair of(
      String finger,
      ExaminedImage image,
      GrayImage first,
      GrayImage second,
      boolean alone,
      PrintAlignment lies) {
    double ppi = image.density().map(PixelDensity::horizontalPpi).orElse(500.0);
    return new AlignedPictures(first, second, lies, ppi).pair(finger, alone);
  }

  private PicturePair pair(String finger, boolean alone) {
    double rim = RIM_MM * ppi / PixelDensity.MM_PER_INCH;
    int left = alone ? 0 : (int) Math.max(0, lies.left() - rim);
    int top = alone ? 0 : (int) Math.max(0, lies.top() - rim);
    int right = alone ? first.width() : (int) Math.min(first.width(), lies.right() + rim);
    int bottom = alone ? first.height() : (int) Math.min(first.height(), lies.bottom() + rim);
    int width = Math.max(1, right - left);
    int height = Math.max(1, bottom - top);
    byte[] before = new byte[width * height];
    byte[] after = new byte[width * height];
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        before[y * width + x] = (byte) gray(first, left + x, top + y);
        double atX = lies.secondX(left + x, top + y);
        double atY = lies.secondY(left + x, top + y);
        after[y * width + x] = (byte) between(atX, atY);
      }
    }
    GrayImage one = GrayImage.owning(width, height, before);
    GrayImage two = GrayImage.owning(width, height, after);
    double mm = PixelDensity.MM_PER_INCH / ppi;
    PhysicalSize size = new PhysicalSize(width, height, width * mm, height * mm, true);
    return PicturePair.of(
        finger,
        size,
        size,
        MAX_ENLARGED,
        Optional.of(Thumbnail.of(one)),
        Optional.of(Thumbnail.of(two)),
        DifferencePicture.of(one, two).map(Thumbnail::of));
  }

  private static int gray(GrayImage image, int x, int y) {
    return x < 0 || y < 0 || x >= image.width() || y >= image.height() ? PAPER : image.grayAt(x, y);
  }

  private long between(double x, double y) {
    int left = (int) Math.floor(x);
    int top = (int) Math.floor(y);
    double across = x - left;
    double down = y - top;
    double upper = gray(second, left, top) * (1 - across) + gray(second, left + 1, top) * across;
    double lower =
        gray(second, left, top + 1) * (1 - across) + gray(second, left + 1, top + 1) * across;
    return Math.round(upper * (1 - down) + lower * down);
  }
}
