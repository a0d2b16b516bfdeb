package ridgeproof.examination.comparison;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.RidgeAnalysis;
import ridgeproof.finding.Finding;
import ridgeproof.spec.layout.FingerPosition;
import ridgeproof.spec.rule.Severity;

/**
 * A finger before and after, rolled or plain.
 *
 * @param rolled whether both captures are rolled prints
 * @param same whether both files hold the same capture, encoded again or not
 */
public record FingerChange(
    FingerPosition finger,
    boolean rolled,
    Optional<FingerCapture> first,
    Optional<FingerCapture> second,
    boolean same) {

  /** How the second capture compares with the first. */
  public enum Trend {
    BETTER,
    WORSE,
    SAME,
    /** Only the second file has it. */
    ADDED,
    /** Only the first file has it. */
    REMOVED
  }

  /** Which capture to send. */
  public enum Send {
    FIRST,
    SECOND,
    EITHER,
    /** Both have a problem that is commonly rejected or worse. */
    NEITHER
  }

  public Trend trend() {
    if (first.isEmpty()) {
      return Trend.ADDED;
    }
    if (second.isEmpty()) {
      return Trend.REMOVED;
    }
    int better = second.get().better(first.get());
    return better > 0 ? Trend.BETTER : better < 0 ? Trend.WORSE : Trend.SAME;
  }

  public Send send() {
    if (Stream.concat(first.stream(), second.stream()).allMatch(FingerCapture::isDoubtful)) {
      return Send.NEITHER;
    }
    return switch (trend()) {
      case BETTER, ADDED -> Send.SECOND;
      case WORSE, REMOVED -> Send.FIRST;
      case SAME -> Send.EITHER;
    };
  }

  /** Rolled prints by finger, then plain prints by finger. */
  static List<FingerChange> of(
      FindingsReport first, FindingsReport second, List<RecordPair> pairs) {
    List<FingerChange> changes = new ArrayList<>();
    for (boolean rolled : new boolean[] {true, false}) {
      Map<FingerPosition, FingerCapture> before = captures(first, rolled);
      Map<FingerPosition, FingerCapture> after = captures(second, rolled);
      for (FingerPosition finger : FingerPosition.values()) {
        Optional<FingerCapture> left = Optional.ofNullable(before.get(finger));
        Optional<FingerCapture> right = Optional.ofNullable(after.get(finger));
        if (left.isPresent() || right.isPresent()) {
          boolean same =
              left.isPresent() && right.isPresent() && same(pairs, left.get(), right.get());
          changes.add(new FingerChange(finger, rolled, left, right, same));
        }
      }
    }
    return List.copyOf(changes);
  }

  private static boolean same(List<RecordPair> pairs, FingerCapture left, FingerCapture right) {
    return pairs.stream()
        .filter(pair -> pair.first().ordinal() == left.image().record().ordinal())
        .filter(pair -> pair.second().ordinal() == right.image().record().ordinal())
        .anyMatch(pair -> pair.level().filter(ImageLevel::isSameCapture).isPresent());
  }

  /** Of a finger that is there twice the better capture. */
  private static Map<FingerPosition, FingerCapture> captures(
      FindingsReport report, boolean rolled) {
    Map<Integer, List<Finding>> concerns = report.concernsByRecord();
    Map<FingerPosition, FingerCapture> captures = new EnumMap<>(FingerPosition.class);
    for (ExaminedImage image : report.images()) {
      List<FingerPosition> fingers = TransactionPrints.named(image);
      if (!fingers.isEmpty() && rolled == FingerPosition.isRolledBox(image.positions().get(0))) {
        List<Finding> found = concerns.getOrDefault(image.record().ordinal(), List.of());
        for (FingerPosition finger : fingers) {
          if (!report.missingFingers().contains(finger.code())) {
            captures.merge(
                finger,
                capture(image, finger, found),
                (one, other) -> other.better(one) > 0 ? other : one);
          }
        }
      }
    }
    return captures;
  }

  private static FingerCapture capture(
      ExaminedImage image, FingerPosition finger, List<Finding> found) {
    return new FingerCapture(
        image,
        image.ridges().map(RidgeAnalysis::fingers).map(fingers -> fingers.get(finger)),
        found.stream()
            .filter(f -> f.severity() != Severity.NOTE && concerns(f, image, finger))
            .sorted(Comparator.comparing(Finding::severity))
            .toList());
  }

  /** A finding that names a finger is about no other finger of the image. */
  private static boolean concerns(Finding finding, ExaminedImage image, FingerPosition finger) {
    int position = finding.location().position().orElse(image.positions().get(0));
    return position == image.positions().get(0) || position == finger.code();
  }
}
