package ridgeproof.desk.work;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import ridgeproof.desk.work.DeskFile.State;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.ridges.matching.Minutiae;
import ridgeproof.ridges.quality.FingerMeasures;
import ridgeproof.spec.layout.FingerPosition;
import ridgeproof.transaction.record.LogicalRecord;

/**
 * Finds files of which one may be the other once more: with the same control number, or whose
 * prints match. Only the latest files are compared print by print, two fingers each.
 */
public final class Pairing {

  private static final int CONTROL_NUMBER = 9;
  private static final int CONTROL_REFERENCE = 10;
  private static final int LATEST = 12;
  private static final int FINGERS = 2;
  private static final int MAX_PAIRS = 5;
  private static final int MAX_KNOWN = 5_000;

  /** Why two files go together. */
  public enum Why {
    SAME_NUMBER,
    SAME_FINGERS
  }

  /** Two files, the earlier one first. */
  public record Pair(DeskFile first, DeskFile second, Why why) {}

  /** Whether the prints of two files match, by their ids. */
  private final Map<String, Boolean> known = new HashMap<>();

  /** The pairs among these files, those of the latest first. */
  public synchronized List<Pair> of(List<DeskFile> files) {
    List<DeskFile> examined =
        files.stream().filter(file -> file.state() == State.EXAMINED).toList();
    List<Pair> pairs = new ArrayList<>();
    for (int later = examined.size() - 1; later > 0 && pairs.size() < MAX_PAIRS; later--) {
      for (int earlier = later - 1; earlier >= 0 && pairs.size() < MAX_PAIRS; earlier--) {
        DeskFile first = examined.get(earlier);
        DeskFile second = examined.get(later);
        boolean latest = earlier >= examined.size() - LATEST;
        why(first, second, latest).ifPresent(why -> pairs.add(new Pair(first, second, why)));
      }
    }
    return pairs;
  }

  private Optional<Why> why(DeskFile first, DeskFile second, boolean latest) {
    FindingsReport one = first.examined().orElseThrow().report();
    FindingsReport other = second.examined().orElseThrow().report();
    if (number(one, CONTROL_NUMBER)
        .filter(
            number ->
                number(other, CONTROL_NUMBER).filter(number::equals).isPresent()
                    || number(other, CONTROL_REFERENCE).filter(number::equals).isPresent())
        .isPresent()) {
      return Optional.of(Why.SAME_NUMBER);
    }
    return latest && match(first.id() + second.id(), one, other)
        ? Optional.of(Why.SAME_FINGERS)
        : Optional.empty();
  }

  private static Optional<String> number(FindingsReport report, int field) {
    return report
        .transaction()
        .header()
        .flatMap((LogicalRecord header) -> header.text(field))
        .map(String::strip)
        .filter(text -> !text.isEmpty());
  }

  private boolean match(String pair, FindingsReport one, FindingsReport other) {
    if (known.size() > MAX_KNOWN) {
      known.clear();
    }
    return known.computeIfAbsent(pair, key -> match(one, other));
  }

  /** All of a few fingers: one alone could match by chance among many files. */
  private static boolean match(FindingsReport one, FindingsReport other) {
    Map<FingerPosition, Minutiae> left = prints(one);
    Map<FingerPosition, Minutiae> right = prints(other);
    double least = one.tables().pixelLimits().value("finger-match");
    List<FingerPosition> both =
        left.keySet().stream().filter(right.keySet()::contains).limit(FINGERS).toList();
    return both.size() == FINGERS
        && both.stream()
            .allMatch(
                finger -> right.get(finger).similarities(List.of(left.get(finger)))[0] >= least);
  }

  private static Map<FingerPosition, Minutiae> prints(FindingsReport report) {
    Map<FingerPosition, Minutiae> prints = new EnumMap<>(FingerPosition.class);
    Set<Integer> missing = report.missingFingers();
    for (ExaminedImage image : report.images()) {
      image
          .ridges()
          .ifPresent(
              facts ->
                  facts
                      .fingers()
                      .forEach(
                          (finger, analysis) ->
                              analysis
                                  .measures()
                                  .map(FingerMeasures::minutiae)
                                  .filter(minutiae -> !missing.contains(finger.code()))
                                  .ifPresent(minutiae -> prints.putIfAbsent(finger, minutiae))));
    }
    return prints;
  }

  /** Forgets which files match. */
  public synchronized void forget() {
    known.clear();
  }
}
