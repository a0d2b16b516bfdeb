package ridgeproof.report;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import ridgeproof.examination.ExaminedImage;
import ridgeproof.examination.PixelFacts;
import ridgeproof.imagery.PixelDensity;

/**
 * Two images drawn at one scale: both on a sheet of the same size, so that they stay at one scale
 * however narrow the page is.
 *
 * @param width of the sheets, in millimetres
 * @param height of the sheets, in millimetres
 * @param sheets first, second and, where there is one, their difference
 * @param bar length of the scale bar as drawn, in millimetres; 0 where the resolution is not known
 */
record PicturePair(
    double width, double height, List<Sheet> sheets, double bar, String barWords, String scale) {

  private static final double WIDEST_MM = 75;
  private static final double HIGHEST_MM = 80;
  private static final double NARROWEST_MM = 3;
  private static final double MM_PER_INCH = 25.4;

  /** For pixels of which nobody says how large they are. */
  private static final double SUPPOSED_PPI = 500;

  private static final double BAR_ROOM_MM = 5;

  /**
   * One image.
   *
   * @param words for those who do not see it
   * @param source the pixels as a data address
   */
  record Sheet(
      String caption, String words, double width, double height, Optional<String> source) {}

  private record Size(double width, double height, boolean known) {

    static Size of(ExaminedImage image) {
      int columns = image.pixels().map(PixelFacts::width).orElse(image.width().orElse(1));
      int rows = image.pixels().map(PixelFacts::height).orElse(image.height().orElse(1));
      Optional<PixelDensity> stated =
          image.density().filter(d -> d.horizontalPpi() > 0 && d.verticalPpi() > 0);
      PixelDensity density = stated.orElse(PixelDensity.ofPpi(SUPPOSED_PPI));
      return new Size(
          Math.max(1, columns) / density.horizontalPpi() * MM_PER_INCH,
          Math.max(1, rows) / density.verticalPpi() * MM_PER_INCH,
          stated.isPresent());
    }
  }

  /**
   * @param difference drawn like the first
   */
  static PicturePair of(
      String title,
      ExaminedImage first,
      ExaminedImage second,
      Optional<String> firstSource,
      Optional<String> secondSource,
      Optional<String> difference) {
    Size left = Size.of(first);
    Size right = Size.of(second);
    double width = Math.max(left.width(), right.width());
    double height = Math.max(left.height(), right.height());
    double factor = Math.min(1, Math.min(WIDEST_MM / width, HIGHEST_MM / height));
    boolean known = left.known() && right.known();
    Sheet one = sheet("First", title, left, factor, firstSource);
    Sheet two = sheet("Second", title, right, factor, secondSource);
    int bar = known ? Picture.bar(width) : 0;
    return new PicturePair(
        Math.max(NARROWEST_MM, width * factor),
        Math.max(NARROWEST_MM, height * factor) + (bar > 0 ? BAR_ROOM_MM : 0),
        difference.isEmpty()
            ? List.of(one, two)
            : List.of(one, two, sheet("Difference", title, left, factor, difference)),
        bar * factor,
        bar + " mm",
        scale(known, factor));
  }

  private static Sheet sheet(
      String caption, String title, Size size, double factor, Optional<String> source) {
    return new Sheet(
        caption,
        caption + (source.isPresent() ? ", image of " : ", outline of ") + title,
        Math.max(NARROWEST_MM, size.width() * factor),
        Math.max(NARROWEST_MM, size.height() * factor),
        source);
  }

  private static String scale(boolean known, double factor) {
    if (!known) {
      return "A resolution is not stated: one scale by the pixels.";
    }
    return factor < 1
        ? String.format(Locale.ROOT, "One scale, at most %.2g of the true size.", factor)
        : "One scale, the true size where the page is wide enough.";
  }

  String millimetres(double value) {
    return String.format(Locale.ROOT, "%.2f", value);
  }
}
