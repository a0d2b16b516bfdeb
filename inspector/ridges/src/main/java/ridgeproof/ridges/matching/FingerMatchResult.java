package ridgeproof.ridges.matching;

import java.util.Optional;
import ridgeproof.spec.layout.FingerPosition;

/**
 * Whether the plain print of a finger is of the finger whose roll bears its name.
 *
 * @param position the finger
 * @param verdict the answer
 * @param reason for it
 * @param ownScore similarity of plain and roll of this name
 * @param other the other roll that the plain print is most like, where it is like one at all
 * @param otherScore similarity with that roll, 0 without one
 * @param odds the power of ten by which the prints of the whole card speak for the answer; 0 for an
 *     inconclusive one
 */
public record FingerMatchResult(
    FingerPosition position,
    Verdict verdict,
    Reason reason,
    double ownScore,
    Optional<FingerPosition> other,
    double otherScore,
    double odds) {

  /** An answer without a word on how sure it is. */
  public FingerMatchResult(
      FingerPosition position,
      Verdict verdict,
      Reason reason,
      double ownScore,
      Optional<FingerPosition> other,
      double otherScore) {
    this(position, verdict, reason, ownScore, other, otherScore, 0);
  }

  /** The three answers. */
  public enum Verdict {
    /** Plain and roll are of one finger. */
    CONFIRMED,
    /** The plain print is of another finger: it matches another roll clearly and not its own. */
    CONTRADICTED,
    /** Neither can be said. */
    INCONCLUSIVE
  }

  /** Why an answer is what it is. */
  public enum Reason {
    /** Plain and roll match, and no other roll comes near. */
    MATCHES_OWN_ROLL,
    /**
     * The two are less alike than counts as a match by itself; but of all prints of the card each
     * is most like the other, and every other arrangement of the card is less likely.
     */
    MOST_LIKE_OWN_ROLL,
    /** The plain print matches another roll and not its own. */
    MATCHES_ANOTHER_ROLL,
    /** The plain print matches its own roll and another about as well. */
    MATCHES_SEVERAL_ROLLS,
    /** The plain print matches no roll. */
    MATCHES_NO_ROLL,
    /** There is no plain print of this finger. */
    NO_PLAIN_PRINT,
    /** There is no roll of this finger, and the plain print matches no other. */
    NO_ROLL,
    /** Fewer prints than fingers are in the image: which finger this one is cannot be told. */
    PLACE_UNCERTAIN,
    /** Too few minutiae in the plain print or the roll to tell. */
    TOO_FEW_MINUTIAE
  }
}
