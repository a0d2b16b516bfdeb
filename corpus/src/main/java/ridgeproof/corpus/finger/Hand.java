package ridgeproof.corpus.finger;

import java.util.List;

/** A hand, with its fingers in the order in which a print of it shows them from left to right. */
public enum Hand {
  RIGHT,
  LEFT;

  /** The four fingers without the thumb, from left to right as they lie in a slap image. */
  public List<FingerDigit> slapOrder() {
    return switch (this) {
      case RIGHT ->
          List.of(
              FingerDigit.RIGHT_INDEX,
              FingerDigit.RIGHT_MIDDLE,
              FingerDigit.RIGHT_RING,
              FingerDigit.RIGHT_LITTLE);
      case LEFT ->
          List.of(
              FingerDigit.LEFT_LITTLE,
              FingerDigit.LEFT_RING,
              FingerDigit.LEFT_MIDDLE,
              FingerDigit.LEFT_INDEX);
    };
  }

  /** The thumb of this hand. */
  public FingerDigit thumb() {
    return this == RIGHT ? FingerDigit.RIGHT_THUMB : FingerDigit.LEFT_THUMB;
  }
}
