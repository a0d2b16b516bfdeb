package ridgeproof.examination.cause.print;

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
import ridgeproof.finding.Measure;
import ridgeproof.finding.Observed;
import ridgeproof.imagery.measure.EmptyBand;
import ridgeproof.imagery.measure.GrayLevelStatistics;
import ridgeproof.imagery.measure.Wraparound;
import ridgeproof.spec.limit.PixelLimits;

/**
 * What a scanner or an export did to the pixels of one image: black and white alone, lines that
 * were not transferred, halves in the wrong order. What is measured of such a print follows from
 * it.
 */
public final class BrokenScanCause implements CauseRule {

  private static final String TWO_LEVELS = "RP-IMG-044";
  private static final String LINES_LOST = "RP-IMG-047";
  private static final String WRAPPED = "RP-IMG-048";

  @Override
  public Set<String> ids() {
    return Set.of(TWO_LEVELS, LINES_LOST, WRAPPED);
  }

  @Override
  public void establish(ExaminationInput examinee, List<Finding> found, CauseLog causes) {
    if (examinee.depth() == Depth.STRUCTURE) {
      return;
    }
    PixelLimits limits = examinee.tables().pixelLimits();
    MeasuredPrints prints = new MeasuredPrints(examinee);
    for (ExaminedImage image : prints.marked()) {
      checkLevels(image, image.print().orElseThrow(), limits, causes);
    }
    for (ExaminedImage image : prints.scanned()) {
      GrayLevelStatistics print = image.print().orElseThrow();
      checkLines(image, print, limits, causes);
      checkEdges(image, print.wraparound(), limits, causes);
    }
  }

  private static void checkLevels(
      ExaminedImage image, GrayLevelStatistics print, PixelLimits limits, CauseLog causes) {
    double least = limits.limit("two-level-middle").share();
    if (print.print().total() >= limits.value("gray-range-pixels") && print.middleShare() < least) {
      report(
          TWO_LEVELS,
          image,
          String.format(
              Locale.ROOT,
              "%.0f %% of the print is at middle gray levels",
              100 * print.middleShare()),
          "8-bit gray",
          Measure.against(
              "print at middle gray levels", 100 * print.middleShare(), "%", 100 * least),
          causes);
    }
  }

  private static void checkLines(
      ExaminedImage image, GrayLevelStatistics print, PixelLimits limits, CauseLog causes) {
    EmptyBand band = print.emptyBand();
    int height = image.pixels().orElseThrow().height();
    double most = limits.limit("lost-lines").share() * height;
    if (band.rows() > most) {
      report(
          LINES_LOST,
          image,
          String.format(
              Locale.ROOT,
              "gray level %d in lines %d to %d of %d",
              band.level(),
              band.top() + 1,
              band.top() + band.rows(),
              height),
          "every line of the scan",
          Measure.against("lines of one dark gray level", band.rows(), "", most),
          causes);
    }
  }

  private static void checkEdges(
      ExaminedImage image, Wraparound edges, PixelLimits limits, CauseLog causes) {
    if (edges.joined() >= limits.value("wrapped-pieces")
        && edges.share() >= limits.limit("wrapped-share").share()) {
      report(
          WRAPPED,
          image,
          edges.vertical()
              ? "ridges at the left edge continue at the right edge"
              : "ridges at the upper edge continue at the lower edge",
          "the print in one piece",
          Measure.against(
              "edge that continues at the opposite edge",
              100 * edges.share(),
              "%",
              limits.value("wrapped-share")),
          causes);
    }
  }

  private static void report(
      String rule,
      ExaminedImage image,
      String observed,
      String required,
      Measure evidence,
      CauseLog causes) {
    causes.add(
        rule,
        image.atData(),
        Observed.of(observed),
        required,
        List.of(evidence),
        Consequences.ofRules("RP-RDG", "RP-SEQ", "RP-IMG-035", "RP-IMG-036", "RP-IMG-038")
            .inRecords(Set.of(image.record().ordinal())));
  }
}
