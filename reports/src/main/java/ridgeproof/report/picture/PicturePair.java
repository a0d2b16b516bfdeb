package ridgeproof.report.picture;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import ridgeproof.examination.facts.ExaminedImage;

/**
 * Two images drawn at one scale: both on a sheet of the same size, so that they stay at one scale
 * however narrow the page is.
 *
 * @param title what both show
 * @param width of the sheets, in millimetres
 * @param height of the sheets, in millimetres
 * @param sheets first, second and, where there is one, their difference
 * @param bar length of the scale bar as drawn, in millimetres; 0 where the resolution is not known
 */
public record PicturePair(
    String title,
    double width,
    double height,
    List<Sheet> sheets,
    double bar,
    String barWords,
    String scale) {

  private static final double WIDEST_MM = 75;
  private static final double MAX_MM = 80;
  private static final double NARROWEST_MM = 3;
  private static final double BAR_ROOM_MM = 5;

  /**
   * One image.
   *
   * @param words for those who do not see it
   * @param source the pixels as a data address
   */
  public record Sheet(
      String caption, String words, double width, double height, Optional<String> source) {}

  /**
   * @param difference drawn like the first
   */
  public static PicturePair of(
      String title,
      ExaminedImage first,
      ExaminedImage second,
      Optional<String> firstSource,
      Optional<String> secondSource,
      Optional<String> difference) {
    return of(
        title,
        PhysicalSize.of(first),
        PhysicalSize.of(second),
        1,
        firstSource,
        secondSource,
        difference);
  }

  /**
   * @param most how far they may be enlarged beyond their true size
   * @param difference drawn like the first
   */
  static PicturePair of(
      String title,
      PhysicalSize left,
      PhysicalSize right,
      double most,
      Optional<String> firstSource,
      Optional<String> secondSource,
      Optional<String> difference) {
    double width = Math.max(left.width(), right.width());
    double height = Math.max(left.height(), right.height());
    double factor = Math.min(most, Math.min(WIDEST_MM / width, MAX_MM / height));
    boolean known = left.known() && right.known();
    Sheet one = sheet("First", title, left, factor, firstSource);
    Sheet two = sheet("Second", title, right, factor, secondSource);
    int bar = known ? Picture.bar(width) : 0;
    return new PicturePair(
        title,
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
      String caption, String title, PhysicalSize size, double factor, Optional<String> source) {
    return new Sheet(
        caption,
        caption + (source.isPresent() ? ", image of " : ", outline of ") + title,
        Math.max(NARROWEST_MM, size.width() * factor),
        Math.max(NARROWEST_MM, size.height() * factor),
        source);
  }

  private static String scale(boolean known, double factor) {
    if (!known) {
      return "The resolution is not stated. Both are drawn by their pixels.";
    }
    if (factor > 1) {
      return String.format(
          Locale.ROOT, "Same scale, %.2g times true size where the page is wide enough.", factor);
    }
    return factor < 1
        ? String.format(Locale.ROOT, "Same scale, %.2g of true size or smaller.", factor)
        : "Same scale, true size where the page is wide enough.";
  }

  public String millimetres(double value) {
    return String.format(Locale.ROOT, "%.2f", value);
  }
}
