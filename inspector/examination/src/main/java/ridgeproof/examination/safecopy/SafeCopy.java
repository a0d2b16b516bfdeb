package ridgeproof.examination.safecopy;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import ridgeproof.finding.Finding;
import ridgeproof.spec.rule.Severity;
import ridgeproof.transaction.record.ByteSource;

/**
 * A transaction with the layout of another and nothing of its person.
 *
 * @param bytes as many as the original has
 * @param lost findings of the original that the copy does not show
 * @param gained findings that only the copy shows
 * @param sameFirst whether the first thing to do is the same for both
 */
public record SafeCopy(
    ByteSource bytes, List<FindingChange> lost, List<FindingChange> gained, boolean sameFirst)
    implements Comparable<SafeCopy> {

  /**
   * A finding that only the copy has and for which a bureau would reject it weighs more than all.
   */
  private static final int REJECTED = 1000;

  public SafeCopy {
    lost = List.copyOf(lost);
    gained = List.copyOf(gained);
  }

  /** Whether nothing above a note was lost or gained. */
  boolean isFaithful() {
    return sameFirst && weight() == 0;
  }

  /** How far the images of each record are from showing what they did. */
  Map<Integer, Integer> changesByRecord() {
    Map<Integer, Integer> changes = new HashMap<>();
    lost.forEach(change -> count(change, weight(change.finding(), 1), changes));
    gained.forEach(change -> count(change, weight(change.finding(), REJECTED), changes));
    return changes;
  }

  private static void count(FindingChange change, int weight, Map<Integer, Integer> changes) {
    if (weight > 0 && change.finding().location().record().isPresent()) {
      changes.merge(change.finding().location().record().getAsInt(), weight, Integer::sum);
    }
  }

  private int weight() {
    return Stream.concat(
            lost.stream().map(change -> weight(change.finding(), 1)),
            gained.stream().map(change -> weight(change.finding(), REJECTED)))
        .mapToInt(Integer::intValue)
        .sum();
  }

  private static int weight(Finding finding, int ifBlocking) {
    return switch (finding.severity()) {
      case BLOCKING -> 4 * ifBlocking;
      case LIKELY -> 3;
      case ADVICE -> 1;
      case NOTE -> 0;
    };
  }

  private long added() {
    return gained.stream().filter(c -> c.finding().severity() == Severity.BLOCKING).count();
  }

  /**
   * The better copy first: one that adds nothing to reject, then the one most like the original.
   */
  @Override
  public int compareTo(SafeCopy other) {
    return Comparator.comparingLong(SafeCopy::added)
        .thenComparing(copy -> !copy.sameFirst())
        .thenComparingInt(SafeCopy::weight)
        .compare(this, other);
  }
}
