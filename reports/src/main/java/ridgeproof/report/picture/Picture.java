package ridgeproof.report.picture;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import ridgeproof.examination.facts.ExaminedImage;

/**
 * An image drawn at its true proportion, that of its pixels where they could be decoded, and at its
 * true size where its resolution is stated and the page is wide enough.
 *
 * @param width drawn, in millimetres
 * @param height drawn, in millimetres
 * @param bar length of the scale bar as drawn, in millimetres; 0 where the resolution is not known
 * @param barWords what the scale bar stands for
 * @param source the pixels as a data address
 * @param overlay what was seen of ridges; only where the pixels are shown, since minutiae are as
 *     good as the print
 * @param prints the measures of each print
 */
public record Picture(
    String anchor,
    String title,
    String measures,
    String state,
    String severity,
    double width,
    double height,
    double bar,
    String barWords,
    String scale,
    Optional<String> source,
    int record,
    Optional<Overlay> overlay,
    List<PrintMeasures> prints) {

  /** What a page of paper holds between its margins. */
  private static final double WIDEST_MM = 170;

  private static final double MAX_MM = 120;
  private static final double NARROWEST_MM = 3;
  private static final List<Integer> BARS = List.of(1, 2, 5, 10, 20, 50, 100, 200, 500, 1000);

  public static Picture of(
      ExaminedImage image,
      String title,
      String measures,
      String state,
      String severity,
      Optional<String> source) {
    PhysicalSize size = PhysicalSize.of(image);
    double factor = Math.min(1, Math.min(WIDEST_MM / size.width(), MAX_MM / size.height()));
    int bar = size.known() ? bar(size.width()) : 0;
    return new Picture(
        "i" + image.record().ordinal(),
        title,
        measures,
        state,
        severity,
        Math.max(NARROWEST_MM, size.width() * factor),
        Math.max(NARROWEST_MM, size.height() * factor),
        bar * factor,
        bar + " mm",
        scale(size.known(), factor),
        source,
        image.record().ordinal(),
        source
            .flatMap(shown -> image.ridges())
            .map(
                facts ->
                    Overlay.of(
                        facts,
                        size.width() * factor / size.columns(),
                        size.height() * factor / size.rows())),
        List.of());
  }

  /** The same with the measures of its prints. */
  public Picture withPrints(List<PrintMeasures> measured) {
    return new Picture(
        anchor, title, measures, state, severity, width, height, bar, barWords, scale, source,
        record, overlay, measured);
  }

  /** The longest round length that is at most a third of the width. */
  static int bar(double width) {
    return BARS.stream().filter(length -> length <= width / 3).reduce(0, Math::max);
  }

  private static String scale(boolean known, double factor) {
    if (!known) {
      return "Resolution not stated: in proportion, but not to scale.";
    }
    return factor < 1 ? String.format(Locale.ROOT, "Shown at %.2g of the true size.", factor) : "";
  }

  /** The scores of its prints, from left to right. */
  public String scores() {
    return prints.stream().map(PrintMeasures::title).collect(Collectors.joining("; "));
  }

  public String millimetres(double value) {
    return String.format(Locale.ROOT, "%.2f", value);
  }

  /** Room for the scale bar below the image. */
  public double wholeHeight() {
    return bar > 0 ? height + 5 : height;
  }

  public double wholeWidth() {
    return Math.max(width, bar > 0 ? bar + 14 : width);
  }
}
