package ridgeproof.examination.rules.consistency;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.MarkedSegment;
import ridgeproof.examination.rules.Rule;
import ridgeproof.finding.FindingLog;
import ridgeproof.finding.Measure;
import ridgeproof.finding.Observed;
import ridgeproof.spec.consistency.SegmentField;

/** Boxes and polygons are such, lie within their image, and do not cover one another. */
final class SegmentShapeRule implements Rule {

  private static final int MIN_CORNERS = 3;

  @Override
  public Set<String> ids() {
    return Set.of("RP-IMG-019", "RP-IMG-020", "RP-IMG-021", "RP-IMG-022");
  }

  @Override
  public void check(ExaminationInput examinee, FindingLog log) {
    double mostOverlap = examinee.tables().agreements().threshold("segment-overlap");
    List<SegmentField> layouts = examinee.tables().agreements().segmentFields();
    for (ExaminedImage image : examinee.prints()) {
      for (SegmentField layout : layouts) {
        List<MarkedSegment> segments = MarkedSegment.of(image, layout);
        for (int i = 0; i < segments.size(); i++) {
          checkShape(segments.get(i), log);
          checkWithin(segments.get(i), image, log);
          // Views and joints of one finger lie within one another, fingers do not.
          if (layout.positionItem().isPresent() && segments.get(i).isBox()) {
            checkOverlap(segments.get(i), segments.subList(0, i), mostOverlap, log);
          }
        }
      }
    }
  }

  private static void checkShape(MarkedSegment segment, FindingLog log) {
    if (segment.coordinates() != 2 * segment.statedCorners()) {
      report(
          "RP-IMG-022",
          segment,
          String.format(
              Locale.ROOT,
              "%d corners stated, %d coordinates",
              segment.statedCorners(),
              segment.coordinates()),
          "two coordinates for each corner",
          log);
    } else if (segment.isEmpty() || !segment.isBox() && segment.statedCorners() < MIN_CORNERS) {
      report(
          "RP-IMG-020",
          segment,
          segment.extent(),
          "left edge left of the right edge, top edge above the bottom edge",
          log);
    }
  }

  /** An edge may lie on the far edge of the last pixel, so that it equals the size of the image. */
  private static void checkWithin(MarkedSegment segment, ExaminedImage image, FindingLog log) {
    if (image.trueWidth().isEmpty() || image.trueHeight().isEmpty()) {
      return;
    }
    int width = image.trueWidth().getAsInt();
    int height = image.trueHeight().getAsInt();
    int right = Math.max(segment.left(), segment.right());
    int bottom = Math.max(segment.top(), segment.bottom());
    if (right > width || bottom > height) {
      log.add(
          "RP-IMG-019",
          segment.place(),
          Observed.of(segment.extent()),
          String.format(Locale.ROOT, "within the %d x %d pixels of the image", width, height),
          Optional.of(segment.layout().source()),
          List.of(
              Measure.against("right edge", right, "pixels", width),
              Measure.against("bottom edge", bottom, "pixels", height)));
    }
  }

  private static void checkOverlap(
      MarkedSegment segment, List<MarkedSegment> earlier, double mostPercent, FindingLog log) {
    for (MarkedSegment other : earlier) {
      double percent = segment.overlap(other) * 100;
      if (percent > mostPercent && !segment.position().equals(other.position())) {
        log.add(
            "RP-IMG-021",
            segment.place(),
            Observed.of(
                String.format(Locale.ROOT, "%.0f %% overlap with another segment", percent)),
            String.format(Locale.ROOT, "at most %.0f %%", mostPercent),
            List.of(Measure.against("overlap", percent, "percent", mostPercent)));
      }
    }
  }

  private static void report(
      String rule, MarkedSegment segment, String observed, String required, FindingLog log) {
    log.add(
        rule,
        segment.place(),
        Observed.of(observed),
        required,
        Optional.of(segment.layout().source()),
        List.of());
  }
}
