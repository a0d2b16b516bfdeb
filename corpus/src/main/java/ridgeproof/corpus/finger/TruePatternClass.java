package ridgeproof.corpus.finger;

import ridgeproof.spec.layout.FingerPosition;
import ridgeproof.spec.layout.FingerPosition.Hand;

/**
 * The ridge pattern of a finger.
 *
 * <p>How often each class is met on each finger is from memory of the counts published from large
 * tenprint files (Henry-style classifications, as repeated in Maltoni et al., "Handbook of
 * Fingerprint Recognition"): over all fingers about two thirds loops, three tenths whorls and one
 * twentieth arches; radial loops nearly only on the index finger, whorls most on thumb, index and
 * ring finger. The division of whorls into plain whorls and double loops is common practice.
 */
public enum TruePatternClass {
  PLAIN_ARCH,
  TENTED_ARCH,
  LEFT_LOOP,
  RIGHT_LOOP,
  PLAIN_WHORL,
  DOUBLE_LOOP;

  /** Parts in a thousand: plain arch, tented arch, radial loop, ulnar loop, whorl, double loop. */
  private static int[] frequencies(Digit kind) {
    return switch (kind) {
      case THUMB -> new int[] {27, 8, 3, 567, 265, 130};
      case INDEX -> new int[] {65, 80, 180, 335, 270, 70};
      case MIDDLE -> new int[] {48, 35, 27, 700, 155, 35};
      case RING -> new int[] {16, 12, 11, 601, 330, 30};
      case LITTLE -> new int[] {9, 8, 3, 840, 115, 25};
    };
  }

  /** The expected share of this class on a finger, 0 to 1. */
  public double frequencyOn(FingerPosition digit) {
    int[] parts = frequencies(Digit.of(digit));
    int place =
        switch (this) {
          case PLAIN_ARCH -> 0;
          case TENTED_ARCH -> 1;
          case LEFT_LOOP, RIGHT_LOOP -> this == ulnarLoopOf(digit.hand()) ? 3 : 2;
          case PLAIN_WHORL -> 4;
          case DOUBLE_LOOP -> 5;
        };
    return parts[place] / 1000.0;
  }

  /** A loop that opens towards the little finger: to the right in a print of the right hand. */
  static TruePatternClass ulnarLoopOf(Hand hand) {
    return hand == Hand.RIGHT ? RIGHT_LOOP : LEFT_LOOP;
  }

  static TruePatternClass draw(FingerPosition digit, SeededRandom dice) {
    double left = dice.unit();
    for (TruePatternClass pattern : values()) {
      left -= pattern.frequencyOn(digit);
      if (left < 0) {
        return pattern;
      }
    }
    return ulnarLoopOf(digit.hand());
  }
}
