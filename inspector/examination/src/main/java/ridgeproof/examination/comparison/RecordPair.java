package ridgeproof.examination.comparison;

import java.util.List;
import java.util.Optional;
import ridgeproof.transaction.LogicalRecord;

/**
 * A record of the first transaction and the record of the second that answers to it.
 *
 * @param moved whether it stands elsewhere among the records that both have
 * @param differences of its fields, in the order of their numbers
 * @param image how the images differ, where both have one
 */
public record RecordPair(
    LogicalRecord first,
    LogicalRecord second,
    boolean moved,
    List<ValueDifference> differences,
    Optional<ImageDifference> image) {

  /** Whether anything that counts differs. */
  public boolean differs() {
    return moved
        || differences.stream().anyMatch(difference -> !difference.ignored())
        || image.filter(ImageDifference::differs).isPresent();
  }
}
