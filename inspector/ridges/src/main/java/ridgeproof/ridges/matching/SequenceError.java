package ridgeproof.ridges.matching;

import java.util.List;
import ridgeproof.spec.layout.FingerPosition;

/**
 * What is wrong with the order of a set of prints.
 *
 * @param kind what
 * @param positions the fingers concerned, by the names they bear
 * @param mutual whether the prints of all of them say so; otherwise those of one do and the others'
 *     cannot be told
 * @param score the weakest similarity that it rests on
 * @param odds the power of ten by which the prints of the whole card speak for it; 0 where it rests
 *     on the similarity alone
 */
public record SequenceError(
    Kind kind, List<FingerPosition> positions, boolean mutual, double score, double odds) {

  /** An irregularity that rests on a similarity alone. */
  public SequenceError(Kind kind, List<FingerPosition> positions, boolean mutual, double score) {
    this(kind, positions, mutual, score, 0);
  }

  /** Kinds of disorder. */
  public enum Kind {
    /** Two fingers bear each other's name in the rolls or in the plain prints. */
    EXCHANGED,
    /** The right and the left thumb do. */
    THUMBS_EXCHANGED,
    /** At least three fingers of each other hand do, finger by finger or in the order of a slap. */
    HANDS_EXCHANGED,
    /** At least four fingers of a hand are one box further on, the last one in the first box. */
    SHIFTED,
    /** At least three fingers are in each other's boxes. */
    ROTATED,
    /**
     * A plain print is of a finger rolled under another name, whose own plain print is in place.
     */
    FOUND_ELSEWHERE,
    /** Two rolls are of one finger. */
    ROLLED_TWICE,
    /** Two plain prints are of one finger. */
    PLAIN_TWICE
  }

  public SequenceError {
    positions = List.copyOf(positions);
  }
}
