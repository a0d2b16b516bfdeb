package ridgeproof.examination.rules.image;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.rules.Rule;
import ridgeproof.finding.FindingLog;
import ridgeproof.finding.Measure;
import ridgeproof.finding.Observed;
import ridgeproof.imagery.measure.EdgePadding;
import ridgeproof.imagery.measure.GrayLevelStatistics;
import ridgeproof.spec.limit.PixelLimits;
import ridgeproof.spec.limit.PixelLimits.PixelLimit;

/** The ground of an image is that of the scan. */
final class ImageBackgroundRule implements Rule {

  @Override
  public Set<String> ids() {
    return Set.of("RP-IMG-038");
  }

  @Override
  public void check(ExaminationInput examinee, FindingLog log) {
    if (examinee.depth() == Depth.STRUCTURE) {
      return;
    }
    PixelLimits limits = examinee.tables().pixelLimits();
    for (ExaminedImage image : new MeasuredPrints(examinee).scanned()) {
      GrayLevelStatistics print = image.print().get();
      checkPadding(image, print.padding(), limits, log);
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
                  "lines of one gray level: top %d, bottom %d, left %d, right %d",
                  padding.top(),
                  padding.bottom(),
                  padding.left(),
                  padding.right())),
          "only the scanned area",
          Optional.of(least.source()),
          List.of(Measure.against("lines of one gray level", padding.widest(), "", least.value())));
    }
  }
}
