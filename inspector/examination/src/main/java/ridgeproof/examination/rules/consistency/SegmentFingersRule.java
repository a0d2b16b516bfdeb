package ridgeproof.examination.rules.consistency;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.MarkedSegment;
import ridgeproof.examination.facts.MissingFingers;
import ridgeproof.examination.facts.Positions;
import ridgeproof.examination.rules.Rule;
import ridgeproof.finding.FindingLog;
import ridgeproof.finding.Observed;
import ridgeproof.spec.consistency.SegmentField;

/** Each finger that an image shows is marked once, in the order of the hand, and no other is. */
final class SegmentFingersRule implements Rule {

  private static final Set<Integer> RIGHT_SLAP = Set.of(2, 3, 4, 5);

  /** Laid down side by side, the left one on the left. */
  private static final Set<Integer> THUMBS = Set.of(1, 6);

  private static final Set<Integer> LEFT_SLAP = Set.of(7, 8, 9, 10);

  @Override
  public Set<String> ids() {
    return Set.of("RP-TXN-019", "RP-TXN-020", "RP-TXN-021", "RP-TXN-022", "RP-TXN-023");
  }

  @Override
  public void check(ExaminationInput examinee, FindingLog log) {
    Positions positions = new Positions(examinee.tables());
    MissingFingers missing = new MissingFingers(examinee);
    List<SegmentField> layouts =
        examinee.tables().agreements().segmentFields().stream()
            .filter(layout -> layout.positionItem().isPresent())
            .toList();
    for (ExaminedImage image : examinee.prints()) {
      List<Integer> shown =
          image.positions().stream().flatMap(p -> positions.fingers(p).stream()).toList();
      for (SegmentField layout : layouts) {
        List<MarkedSegment> segments =
            MarkedSegment.of(image, layout).stream()
                .filter(segment -> segment.position().isPresent())
                .toList();
        if (!shown.isEmpty() && !segments.isEmpty()) {
          checkFingers(segments, shown, missing, positions, log);
          checkUnmarked(image, layout, segments, shown, missing, log);
          checkOrder(segments, shown, log);
        }
      }
    }
  }

  private static void checkFingers(
      List<MarkedSegment> segments,
      List<Integer> shown,
      MissingFingers missing,
      Positions positions,
      FindingLog log) {
    Set<Integer> seen = new HashSet<>();
    for (MarkedSegment segment : segments) {
      int finger = segment.position().getAsInt();
      if (positions.isExtraDigit(finger)) {
        continue;
      }
      if (!shown.contains(finger)) {
        report(
            "RP-TXN-019", segment, "position " + finger, "one of " + Positions.listed(shown), log);
      } else if (missing.of(finger).isPresent()) {
        String reason = missing.of(finger).get().reason();
        report(
            "RP-TXN-022",
            segment,
            "finger " + finger + " declared " + reason,
            "either the annotation or the segment",
            log);
      }
      if (!seen.add(finger)) {
        report("RP-TXN-020", segment, "position " + finger + " again", "each finger once", log);
      }
    }
  }

  private static void checkUnmarked(
      ExaminedImage image,
      SegmentField layout,
      List<MarkedSegment> segments,
      List<Integer> shown,
      MissingFingers missing,
      FindingLog log) {
    for (int finger : shown) {
      boolean marked = segments.stream().anyMatch(s -> s.position().getAsInt() == finger);
      if (!marked && missing.of(finger).isEmpty()) {
        log.add(
            "RP-TXN-021",
            image.at(layout.field()).withPosition(OptionalInt.of(finger)),
            Observed.of("no segment of position " + finger),
            "a segment for each finger that is there",
            Optional.of(layout.source()),
            List.of());
      }
    }
  }

  private static void checkOrder(
      List<MarkedSegment> segments, List<Integer> shown, FindingLog log) {
    boolean right = RIGHT_SLAP.containsAll(shown);
    if (!right && !LEFT_SLAP.containsAll(shown) && !THUMBS.containsAll(shown)) {
      return;
    }
    List<MarkedSegment> leftToRight =
        segments.stream()
            .filter(segment -> shown.contains(segment.position().getAsInt()))
            .sorted(Comparator.comparingInt(MarkedSegment::doubleCentre))
            .toList();
    List<Integer> found = leftToRight.stream().map(s -> s.position().getAsInt()).toList();
    List<Integer> wanted =
        found.stream()
            .sorted(right ? Comparator.naturalOrder() : Comparator.reverseOrder())
            .toList();
    if (!found.equals(wanted)) {
      report(
          "RP-TXN-023",
          leftToRight.get(0),
          "from left: " + Positions.listed(found),
          "from left: " + Positions.listed(wanted),
          log);
    }
  }

  private static void report(
      String rule, MarkedSegment segment, String observed, String required, FindingLog log) {
    log.add(rule, segment.place(), Observed.of(observed), required);
  }
}
