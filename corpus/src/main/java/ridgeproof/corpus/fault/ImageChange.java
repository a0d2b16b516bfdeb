package ridgeproof.corpus.fault;

import java.util.List;
import java.util.function.IntBinaryOperator;
import java.util.function.UnaryOperator;
import ridgeproof.imagery.GrayImage;

/** What becomes of a whole image between the platen and the file. */
public final class ImageChange {

  private static final int PAPER = 250;

  private ImageChange() {}

  /**
   * An edit of the catalogue of faults.
   *
   * @param name such as {@code mirror}
   * @param numbers percent, levels or pixels, as the edit needs them
   * @throws IllegalArgumentException for a name that is none
   */
  public static UnaryOperator<GrayImage> edit(String name, List<Integer> numbers) {
    return switch (name) {
      case "mirror" -> image -> drawn(image, (x, y) -> image.grayAt(image.width() - 1 - x, y));
      case "flip" -> image -> drawn(image, (x, y) -> image.grayAt(x, image.height() - 1 - y));
      case "upside-down" ->
          image ->
              drawn(image, (x, y) -> image.grayAt(image.width() - 1 - x, image.height() - 1 - y));
      case "quarter" ->
          image ->
              drawn(
                  image.height(), image.width(), (x, y) -> image.grayAt(y, image.height() - 1 - x));
      case "invert" -> image -> drawn(image, (x, y) -> 255 - image.grayAt(x, y));
      case "even" -> image -> drawn(image, (x, y) -> numbers.get(0));
      case "noise" -> image -> drawn(image, (x, y) -> PAPER - noise(x, y));
      case "scale" -> image -> scaled(image, numbers.get(0) / 100.0, numbers.get(0) / 100.0);
      case "scale-across" -> image -> scaled(image, numbers.get(0) / 100.0, 1);
      case "enlarge" -> image -> enlarged(image, numbers.isEmpty() ? 0 : numbers.get(0));
      case "stretch-gray" ->
          image ->
              drawn(
                  image,
                  (x, y) -> clamped(numbers.get(0) + image.grayAt(x, y) * numbers.get(1) / 100));
      case "two-levels" ->
          image -> drawn(image, (x, y) -> image.grayAt(x, y) < numbers.get(0) ? 0 : 255);
      case "below" ->
          image ->
              drawn(
                  image,
                  (x, y) ->
                      y > image.height() * numbers.get(0) / 100
                          ? PAPER - noise(x, y)
                          : image.grayAt(x, y));
      case "above" ->
          image ->
              drawn(
                  image,
                  (x, y) ->
                      y < image.height() * numbers.get(0) / 100
                          ? PAPER - noise(x, y)
                          : image.grayAt(x, y));
      case "right-of" ->
          image ->
              drawn(
                  image,
                  (x, y) ->
                      x > image.width() * numbers.get(0) / 100
                          ? PAPER - noise(x, y)
                          : image.grayAt(x, y));
      case "lines-lost" ->
          image ->
              drawn(
                  image,
                  (x, y) -> y > image.height() * numbers.get(0) / 100 ? 0 : image.grayAt(x, y));
      case "wrap" ->
          image ->
              drawn(
                  image,
                  (x, y) ->
                      image.grayAt((x + image.width() * numbers.get(0) / 100) % image.width(), y));
      case "frame" -> image -> framed(image, numbers.get(0), numbers.get(1));
      case "crop" ->
          image ->
              image.part(
                  (image.width() - numbers.get(0)) / 2,
                  (image.height() - numbers.get(1)) / 2,
                  numbers.get(0),
                  numbers.get(1));
      default -> throw new IllegalArgumentException("no such edit of pixels");
    };
  }

  /** Both on one platen. */
  static GrayImage darker(GrayImage one, GrayImage other) {
    return drawn(
        one,
        (x, y) ->
            x < other.width() && y < other.height()
                ? Math.min(one.grayAt(x, y), other.grayAt(x, y))
                : one.grayAt(x, y));
  }

  /** Paper around, or less of it: the middle of the image in a frame of this size. */
  private static GrayImage framed(GrayImage image, int width, int height) {
    int left = (width - image.width()) / 2;
    int top = (height - image.height()) / 2;
    return drawn(
        width,
        height,
        (x, y) -> {
          boolean within =
              x >= left && y >= top && x - left < image.width() && y - top < image.height();
          return within ? image.grayAt(x - left, y - top) : PAPER - noise(x, y);
        });
  }

  /**
   * Scanned at half the resolution and blown up again: as sharp as its scan.
   *
   * @param repeated percent of a pixel that is that of the scan again, and not between two of them
   */
  private static GrayImage enlarged(GrayImage image, int repeated) {
    GrayImage half = scaled(image, 0.5, 0.5);
    double across = image.width() / (double) half.width();
    double down = image.height() / (double) half.height();
    GrayImage between = scaled(half, across, down);
    return drawn(
        between,
        (x, y) ->
            (between.grayAt(x, y) * (100 - repeated)
                    + half.grayAt((int) (x / across), (int) (y / down)) * repeated
                    + 50)
                / 100);
  }

  /** Means of the area where it shrinks, straight lines between pixels where it grows. */
  private static GrayImage scaled(GrayImage image, double across, double down) {
    int width = (int) Math.round(image.width() * across);
    int height = (int) Math.round(image.height() * down);
    return drawn(
        width,
        height,
        (x, y) -> sample(image, (x + 0.5) / across, (y + 0.5) / down, 1 / across, 1 / down));
  }

  private static int sample(GrayImage image, double x, double y, double wide, double high) {
    double reachX = Math.max(1, wide);
    double reachY = Math.max(1, high);
    double sum = 0;
    double weights = 0;
    for (int j = (int) Math.floor(y - reachY); j <= y + reachY; j++) {
      for (int i = (int) Math.floor(x - reachX); i <= x + reachX; i++) {
        double weight =
            Math.max(0, 1 - Math.abs(i + 0.5 - x) / reachX)
                * Math.max(0, 1 - Math.abs(j + 0.5 - y) / reachY);
        int column = Math.max(0, Math.min(image.width() - 1, i));
        int row = Math.max(0, Math.min(image.height() - 1, j));
        sum += weight * image.grayAt(column, row);
        weights += weight;
      }
    }
    return clamped((int) Math.round(sum / weights));
  }

  private static GrayImage drawn(GrayImage like, IntBinaryOperator gray) {
    return drawn(like.width(), like.height(), gray);
  }

  private static GrayImage drawn(int width, int height, IntBinaryOperator gray) {
    byte[] pixels = new byte[width * height];
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        pixels[y * width + x] = (byte) gray.applyAsInt(x, y);
      }
    }
    return GrayImage.owning(width, height, pixels);
  }

  /** A few gray levels that differ from place to place and are always the same. */
  private static int noise(int x, int y) {
    int mixed = (x * 0x9E3779B1) ^ (y * 0x85EBCA77);
    mixed ^= mixed >>> 15;
    mixed *= 0x2C1B3C6D;
    return mixed >>> 29;
  }

  private static int clamped(int value) {
    return Math.max(0, Math.min(255, value));
  }
}
