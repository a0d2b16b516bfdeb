package ridgeproof.examination.comparison;

import java.util.List;
import java.util.Optional;
import ridgeproof.transaction.record.LogicalRecord;

/**
 * A record of the first transaction and the record of the second that answers to it.
 *
 * @param moved whether it stands elsewhere among the records that both have
 * @param otherUnread whether bytes differ that belong to no field
 * @param differences of its fields, in the order of their numbers
 * @param image how the images differ, where both have one
 * @param showsFingers whether the first shows named fingers
 * @param fingers what the ridges say; empty where the pixels are the same, where the images show no
 *     friction ridges, and where it was not asked for
 */
public record RecordPair(
    LogicalRecord first,
    LogicalRecord second,
    boolean moved,
    boolean otherUnread,
    List<ValueDifference> differences,
    Optional<ImageDifference> image,
    boolean showsFingers,
    Optional<FingerComparison> fingers) {

  /** Whether anything that counts differs. */
  public boolean differs() {
    return moved
        || otherUnread
        || differences.stream().anyMatch(difference -> !difference.ignored())
        || image.filter(ImageDifference::differs).isPresent();
  }

  /** How much the images have in common, where both records have one. */
  public Optional<ImageLevel> level() {
    return image.map(this::level);
  }

  private ImageLevel level(ImageDifference difference) {
    if (difference instanceof ImageDifference.SameBytes) {
      return ImageLevel.SAME_BYTES;
    }
    if (difference instanceof ImageDifference.SamePixels) {
      return ImageLevel.SAME_PIXELS;
    }
    if (difference instanceof ImageDifference.DifferentPixels pixels && pixels.isSameCapture()) {
      return ImageLevel.SAME_CAPTURE;
    }
    if (difference instanceof ImageDifference.NotDecoded
        || difference instanceof ImageDifference.NotOpened) {
      return ImageLevel.CANNOT_BE_TOLD;
    }
    return fingers
        .map(
            found ->
                switch (found.answer()) {
                  case SAME_FINGER -> ImageLevel.SAME_FINGER;
                  case DIFFERENT_FINGER -> ImageLevel.DIFFERENT_FINGER;
                  case CANNOT_BE_TOLD -> ImageLevel.CANNOT_BE_TOLD;
                })
        .orElse(ImageLevel.DIFFERENT_PIXELS);
  }

  RecordPair with(FingerComparison found) {
    return new RecordPair(
        first, second, moved, otherUnread, differences, image, showsFingers, Optional.of(found));
  }
}
