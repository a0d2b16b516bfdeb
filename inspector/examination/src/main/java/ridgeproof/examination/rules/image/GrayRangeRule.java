package ridgeproof.examination.rules.image;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.rules.Rule;
import ridgeproof.finding.FindingLog;
import ridgeproof.finding.Location;
import ridgeproof.finding.Measure;
import ridgeproof.finding.Observed;
import ridgeproof.imagery.measure.GrayHistogram;
import ridgeproof.spec.limit.PixelLimits;
import ridgeproof.spec.limit.PixelLimits.PixelLimit;

/**
 * The gray levels that occur in the print are as many as EBTS Appendix F asks of scanners (from
 * memory): at least 128 in 99 % and at least 200 in 80 % of the images.
 */
final class GrayRangeRule implements Rule {

  @Override
  public Set<String> ids() {
    return Set.of("RP-IMG-035", "RP-IMG-036");
  }

  @Override
  public void check(ExaminationInput examinee, FindingLog log) {
    if (examinee.depth() == Depth.STRUCTURE) {
      return;
    }
    PixelLimits limits = examinee.tables().pixelLimits();
    PixelLimit least = limits.limit("least-gray-range");
    int noise = (int) limits.value("gray-level-pixels");
    List<Integer> ranges = new ArrayList<>();
    for (ExaminedImage image : new MeasuredPrints(examinee).scanned()) {
      GrayHistogram print = image.print().get().marked();
      if (print.total() < limits.value("gray-range-pixels")) {
        continue;
      }
      int range = print.levels(noise);
      ranges.add(range);
      if (range < least.value()) {
        log.add(
            "RP-IMG-035",
            image.atData(),
            Observed.of(range + " gray levels in the print"),
            String.format(Locale.ROOT, "at least %.0f gray levels", least.value()),
            Optional.of(least.source()),
            List.of(Measure.against("gray levels", range, "", least.value())));
      }
    }
    checkShare(ranges, limits, log);
  }

  private static void checkShare(List<Integer> ranges, PixelLimits limits, FindingLog log) {
    PixelLimit wanted = limits.limit("wanted-gray-range");
    PixelLimit share = limits.limit("wanted-gray-range-share");
    long reached = ranges.stream().filter(range -> range >= wanted.value()).count();
    if (ranges.size() < limits.value("gray-range-images")
        || reached >= share.share() * ranges.size()) {
      return;
    }
    log.add(
        "RP-IMG-036",
        Location.file(),
        Observed.of(
            String.format(
                Locale.ROOT,
                "%d of %d images reach %.0f gray levels",
                reached,
                ranges.size(),
                wanted.value())),
        String.format(Locale.ROOT, "%.0f %% of the images", share.value()),
        Optional.of(share.source()),
        List.of(
            Measure.against(
                "images that reach the target",
                100.0 * reached / ranges.size(),
                "%",
                share.value())));
  }
}
