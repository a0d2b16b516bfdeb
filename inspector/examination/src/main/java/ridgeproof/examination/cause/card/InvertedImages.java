package ridgeproof.examination.cause.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import ridgeproof.examination.cause.CauseLog;
import ridgeproof.examination.cause.CauseRule;
import ridgeproof.examination.cause.Consequences;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.rules.image.MeasuredPrints;
import ridgeproof.finding.Finding;
import ridgeproof.finding.Location;
import ridgeproof.finding.Measure;
import ridgeproof.finding.Observed;
import ridgeproof.imagery.measure.GrayLevelStatistics;
import ridgeproof.spec.limit.PixelLimits;

/**
 * Ridges are dark on a light ground. A dark ground alone may have been painted. Only where the
 * places that touched nothing, between the ridges and where the print fades, are as dark as the
 * ground, the whole image is inverted; that alone makes it look wet, smeared or empty.
 */
public final class InvertedImages implements CauseRule {

  private static final String ONE = "RP-IMG-037";
  private static final String ALL = "RP-IMG-051";
  private static final double DARK_TENTH = 0.1;
  private static final double MEDIAN = 0.5;

  /** A print that fills its image shows no ground. */
  private static final double NEARLY_ALL = 0.8;

  @Override
  public Set<String> ids() {
    return Set.of(ONE, ALL);
  }

  @Override
  public void establish(ExaminationInput examinee, List<Finding> found, CauseLog causes) {
    if (examinee.depth() == Depth.STRUCTURE) {
      return;
    }
    PixelLimits limits = examinee.tables().pixelLimits();
    List<ExaminedImage> images = new MeasuredPrints(examinee).scanned();
    List<ExaminedImage> inverted = new ArrayList<>();
    for (ExaminedImage image : images) {
      if (isInverted(facts(image), limits)) {
        inverted.add(image);
      }
    }
    List<ExaminedImage> dark =
        images.stream().filter(image -> hasDarkGround(facts(image), limits)).toList();
    if (!inverted.isEmpty() && dark.size() > 1 && dark.size() >= NEARLY_ALL * images.size()) {
      report(
          ALL,
          Location.file(),
          String.format(Locale.ROOT, "%d of %d images", dark.size(), images.size()),
          images.stream().filter(image -> mayBeInverted(facts(image), limits)).toList(),
          limits,
          causes);
    } else {
      inverted.forEach(
          image ->
              report(ONE, image.atData(), tones(facts(image)), List.of(image), limits, causes));
    }
  }

  private static void report(
      String rule,
      Location place,
      String observed,
      List<ExaminedImage> images,
      PixelLimits limits,
      CauseLog causes) {
    double ground =
        images.stream()
            .filter(image -> showsGround(facts(image), limits))
            .mapToInt(image -> facts(image).ground().getAsInt())
            .average()
            .orElse(0);
    causes.add(
        rule,
        place,
        Observed.of(observed),
        "dark ridges on a light ground",
        List.of(Measure.against("ground", ground, "gray levels", limits.value("dark-ground"))),
        Consequences.ofRules("RP-RDG", "RP-SEQ", "RP-IMG-035", "RP-IMG-036")
            .inRecords(ExaminedImage.ordinals(images)));
  }

  private static GrayLevelStatistics facts(ExaminedImage image) {
    return image.print().orElseThrow();
  }

  private static String tones(GrayLevelStatistics print) {
    return String.format(
        Locale.ROOT,
        "ground at gray level %d, print at %d",
        print.ground().orElse(0),
        print.print().quantile(MEDIAN));
  }

  /** Beside one that is certainly inverted, this is enough for others. */
  private static boolean hasDarkGround(GrayLevelStatistics print, PixelLimits limits) {
    return showsGround(print, limits) && print.ground().getAsInt() <= limits.value("dark-ground");
  }

  /** A print on a light ground is as it should be, whatever was done to the others. */
  private static boolean mayBeInverted(GrayLevelStatistics print, PixelLimits limits) {
    return !showsGround(print, limits) || hasDarkGround(print, limits);
  }

  private static boolean showsGround(GrayLevelStatistics print, PixelLimits limits) {
    return print.ground().isPresent() && print.bareShare() >= limits.limit("ground-share").share();
  }

  private static boolean isInverted(GrayLevelStatistics print, PixelLimits limits) {
    double near = limits.value("ground-nearness");
    if (!showsGround(print, limits)) {
      return false;
    }
    double fading = (double) print.fading().total() / Math.max(1, print.marked().total());
    int ground = print.ground().getAsInt();
    return fading >= limits.limit("fading-share").share()
        && ground <= limits.value("dark-ground")
        && Math.abs(print.fading().quantile(MEDIAN) - ground) <= near
        && print.marked().quantile(DARK_TENTH) - ground <= near
        && print.print().quantile(MEDIAN) - ground > near;
  }
}
