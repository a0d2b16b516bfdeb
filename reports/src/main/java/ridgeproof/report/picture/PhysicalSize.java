package ridgeproof.report.picture;

import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.PixelStatistics;
import ridgeproof.imagery.PixelDensity;

/**
 * How large an image is on the finger: by its pixels where they could be decoded, else by what its
 * record states.
 *
 * @param columns in pixels, at least 1
 * @param rows in pixels, at least 1
 * @param width in millimetres
 * @param height in millimetres
 * @param known whether the resolution is stated; otherwise that of most prints is supposed
 */
record PhysicalSize(int columns, int rows, double width, double height, boolean known) {

  /** For pixels of which nobody says how large they are. */
  private static final PixelDensity SUPPOSED = PixelDensity.ofPpi(500);

  /** For an image of which nobody says how many pixels it has. */
  private static final double UNKNOWN_MM = 40;

  static PhysicalSize of(ExaminedImage image) {
    int columns = image.pixels().map(PixelStatistics::width).orElse(image.width().orElse(0));
    int rows = image.pixels().map(PixelStatistics::height).orElse(image.height().orElse(0));
    if (columns < 1 || rows < 1) {
      return new PhysicalSize(1, 1, UNKNOWN_MM, UNKNOWN_MM, false);
    }
    boolean known =
        image.density().filter(d -> d.horizontalPpi() > 0 && d.verticalPpi() > 0).isPresent();
    PixelDensity density = known ? image.density().orElseThrow() : SUPPOSED;
    return new PhysicalSize(
        columns,
        rows,
        columns / density.horizontalPpi() * PixelDensity.MM_PER_INCH,
        rows / density.verticalPpi() * PixelDensity.MM_PER_INCH,
        known);
  }
}
