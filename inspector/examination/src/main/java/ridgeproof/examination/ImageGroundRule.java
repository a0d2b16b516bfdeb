package ridgeproof.examination;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import ridgeproof.finding.FindingLog;
import ridgeproof.finding.Measure;
import ridgeproof.finding.Observed;
import ridgeproof.imagery.measure.EdgePadding;
import ridgeproof.imagery.measure.PrintFacts;
import ridgeproof.spec.PixelLimits;
import ridgeproof.spec.PixelLimits.PixelLimit;

/** Ridges are dark on a light ground, and the ground is that of the scan. */
final class ImageGroundRule implements Rule {

  private static final double DARK_TENTH = 0.1;
  private static final double MEDIAN = 0.5;

  @Override
  public Set<String> ids() {
    return Set.of("RP-IMG-037", "RP-IMG-038");
  }

  @Override
  public void check(Examinee examinee, FindingLog log) {
    if (examinee.depth() == Depth.STRUCTURE) {
      return;
    }
    PixelLimits limits = examinee.tables().pixelLimits();
    for (ExaminedImage image : new MeasuredPrints(examinee).scanned()) {
      PrintFacts print = image.pixels().get().print().get();
      checkPolarity(image, print, limits, log);
      checkPadding(image, print.padding(), limits, log);
    }
  }

  /**
   * A dark ground alone may have been painted. Only where the places that touched nothing, between
   * the ridges and where the print fades, are as dark as the ground, the whole image is turned.
   */
  private static void checkPolarity(
      ExaminedImage image, PrintFacts print, PixelLimits limits, FindingLog log) {
    PixelLimit dark = limits.limit("dark-ground");
    double near = limits.value("ground-nearness");
    if (print.ground().isEmpty() || print.bareShare() < limits.limit("ground-share").share()) {
      return;
    }
    double fading = (double) print.fading().total() / Math.max(1, print.marked().total());
    if (fading < limits.limit("fading-share").share()) {
      return;
    }
    int ground = print.ground().getAsInt();
    boolean turned =
        ground <= dark.value()
            && Math.abs(print.fading().quantile(MEDIAN) - ground) <= near
            && print.marked().quantile(DARK_TENTH) - ground <= near
            && print.print().quantile(MEDIAN) - ground > near;
    if (turned) {
      log.add(
          "RP-IMG-037",
          image.atData(),
          Observed.of(
              String.format(
                  Locale.ROOT,
                  "ground at gray level %d, print at %d",
                  ground,
                  print.print().quantile(MEDIAN))),
          "dark ridges on a light ground",
          Optional.empty(),
          List.of(Measure.against("ground", ground, "gray levels", dark.value())));
    }
  }

  private static void checkPadding(
      ExaminedImage image, EdgePadding padding, PixelLimits limits, FindingLog log) {
    PixelLimit least = limits.limit("padding-lines");
    if (padding.widest() >= least.value()) {
      log.add(
          "RP-IMG-038",
          image.atData(),
          Observed.of(
              String.format(
                  Locale.ROOT,
                  "constant lines: top %d, bottom %d, left %d, right %d",
                  padding.top(),
                  padding.bottom(),
                  padding.left(),
                  padding.right())),
          "the scan alone",
          Optional.of(least.source()),
          List.of(Measure.against("constant lines", padding.widest(), "", least.value())));
    }
  }
}
