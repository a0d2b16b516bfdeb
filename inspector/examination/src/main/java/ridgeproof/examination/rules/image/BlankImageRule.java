package ridgeproof.examination.rules.image;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.MissingFingers;
import ridgeproof.examination.facts.PixelStatistics;
import ridgeproof.examination.facts.Positions;
import ridgeproof.examination.rules.Rule;
import ridgeproof.finding.FindingLog;
import ridgeproof.finding.Measure;
import ridgeproof.finding.Observed;
import ridgeproof.imagery.measure.GrayLevelStatistics;
import ridgeproof.spec.limit.PixelLimits.PixelLimit;

/** An image of a print shows something. */
final class BlankImageRule implements Rule {

  @Override
  public Set<String> ids() {
    return Set.of("RP-IMG-033", "RP-IMG-034");
  }

  @Override
  public void check(ExaminationInput examinee, FindingLog log) {
    if (examinee.depth() == Depth.STRUCTURE) {
      return;
    }
    PixelLimit share = examinee.tables().pixelLimits().limit("blank-share");
    MissingFingers missing = new MissingFingers(examinee);
    Positions positions = new Positions(examinee.tables());
    for (ExaminedImage image : examinee.prints()) {
      // Stations send an empty image for a finger that is declared missing.
      if (image.pixels().isPresent() && !missing.isAllOf(image, positions)) {
        check(image, image.pixels().get(), share, log);
      }
    }
  }

  private static void check(
      ExaminedImage image, PixelStatistics pixels, PixelLimit least, FindingLog log) {
    if (pixels.grayLevels() == 1) {
      log.add(
          "RP-IMG-033",
          image.atData(),
          Observed.of("gray level " + pixels.darkest() + " in every pixel"),
          "a print");
      return;
    }
    double marked = pixels.print().map(GrayLevelStatistics::markedShare).orElse(1.0);
    if (marked < least.share()) {
      log.add(
          "RP-IMG-034",
          image.atData(),
          Observed.of(String.format(Locale.ROOT, "%.1f %% of the image is marked", marked * 100)),
          "a print",
          Optional.of(least.source()),
          List.of(Measure.against("marked area", marked * 100, "%", least.value())));
    }
  }
}
