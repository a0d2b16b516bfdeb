package ridgeproof.examination.comparison;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.cause.Repetitions;
import ridgeproof.finding.Finding;
import ridgeproof.finding.Location;
import ridgeproof.spec.rule.Severity;

/**
 * How the findings went over from the first to the second. A problem is the same one where its rule
 * and its place agree, however the value changed: a print that is a little less dry is still dry.
 *
 * @param resolved findings of the first that the second no longer has
 * @param present findings of the second that the first had too
 * @param added findings that only the second has
 */
public record FindingChanges(List<Finding> resolved, List<Finding> present, List<Finding> added) {

  public FindingChanges {
    resolved = List.copyOf(resolved);
    present = List.copyOf(present);
    added = List.copyOf(added);
  }

  /** What asks for something: all but mere facts. */
  public static List<Finding> problems(List<Finding> findings) {
    return findings.stream().filter(f -> f.severity() != Severity.NOTE).toList();
  }

  static FindingChanges of(FindingsReport first, FindingsReport second, RecordPairing pairing) {
    Map<Integer, String> left = new HashMap<>();
    Map<Integer, String> right = new HashMap<>();
    for (RecordPairing.Pair pair : pairing.pairs()) {
      left.put(pair.first().ordinal(), "pair " + pair.first().ordinal());
      right.put(pair.second().ordinal(), "pair " + pair.first().ordinal());
    }
    Matching matching = new Matching(first.everyFinding(), second.everyFinding());
    for (Level level : Level.values()) {
      matching.match(f -> level.of(f, left, "first"), f -> level.of(f, right, "second"));
    }
    return new FindingChanges(
        Repetitions.gathered(only(first.unexplained(), matching.left)),
        Repetitions.gathered(without(second.unexplained(), matching.right)),
        Repetitions.gathered(only(second.unexplained(), matching.right)));
  }

  private static List<Finding> only(List<Finding> findings, Set<Finding> unmatched) {
    return findings.stream().filter(unmatched::contains).toList();
  }

  private static List<Finding> without(List<Finding> findings, Set<Finding> unmatched) {
    return findings.stream().filter(f -> !unmatched.contains(f)).toList();
  }

  /** How closely two findings have to agree, the closest first. */
  private enum Level {
    ALIKE,
    SAME_PLACE,
    SAME_FINGER_OR_FIELD;

    List<Object> of(Finding finding, Map<Integer, String> pairs, String side) {
      Location at = finding.location();
      // A record that only one of them has is not found in the other.
      String record =
          at.record().isEmpty()
              ? ""
              : pairs.getOrDefault(at.record().getAsInt(), side + at.record().getAsInt());
      List<Object> key =
          new ArrayList<>(List.of(finding.ruleId(), record, at.position(), at.field()));
      if (this != SAME_FINGER_OR_FIELD) {
        key.addAll(List.of(at.subfield(), at.item()));
      }
      if (this == ALIKE) {
        key.addAll(List.of(finding.observed().text(), finding.required()));
      }
      return key;
    }
  }

  /** The findings of either side for which no other was found yet, each by itself. */
  private static final class Matching {

    private final Set<Finding> left = Collections.newSetFromMap(new IdentityHashMap<>());
    private final Set<Finding> right = Collections.newSetFromMap(new IdentityHashMap<>());
    private final List<Finding> first;
    private final List<Finding> second;

    Matching(List<Finding> first, List<Finding> second) {
      this.first = first;
      this.second = second;
      left.addAll(first);
      right.addAll(second);
    }

    void match(Function<Finding, List<Object>> ofFirst, Function<Finding, List<Object>> ofSecond) {
      Map<List<Object>, Deque<Finding>> waiting = new HashMap<>();
      second.stream()
          .filter(right::contains)
          .forEach(f -> waiting.computeIfAbsent(ofSecond.apply(f), k -> new ArrayDeque<>()).add(f));
      first.stream()
          .filter(left::contains)
          .forEach(
              f -> {
                Deque<Finding> found = waiting.get(ofFirst.apply(f));
                if (found != null && !found.isEmpty()) {
                  left.remove(f);
                  right.remove(found.remove());
                }
              });
    }
  }
}
