package ridgeproof.examination.safecopy;

import java.util.Comparator;
import java.util.List;
import ridgeproof.finding.Finding;
import ridgeproof.spec.rule.Severity;
import ridgeproof.transaction.record.ByteSource;

/**
 * A transaction with the layout of another and nothing of its person.
 *
 * @param bytes as many as the original has
 * @param lost findings of the original that the copy does not show
 * @param gained findings that only the copy shows
 */
public record SafeCopy(ByteSource bytes, List<FindingChange> lost, List<FindingChange> gained)
    implements Comparable<SafeCopy> {

  public SafeCopy {
    lost = List.copyOf(lost);
    gained = List.copyOf(gained);
  }

  /** The findings for which a bureau would reject the copy and not the original. */
  List<Finding> added() {
    return gained.stream()
        .map(FindingChange::finding)
        .filter(finding -> finding.severity() == Severity.BLOCKING)
        .toList();
  }

  /** The better copy first: the one that adds least of its own, then the one that shows most. */
  @Override
  public int compareTo(SafeCopy other) {
    return Comparator.comparingInt((SafeCopy copy) -> copy.added().size())
        .thenComparingInt(copy -> copy.lost().size())
        .compare(this, other);
  }
}
