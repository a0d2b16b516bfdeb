package ridgeproof.spec.layout;

import java.util.List;
import java.util.Optional;

/**
 * The ten fingers, by the finger position codes of ANSI/NIST-ITL (table 8 in 1-2011, from memory).
 */
public enum FingerPosition {
  RIGHT_THUMB(1),
  RIGHT_INDEX(2),
  RIGHT_MIDDLE(3),
  RIGHT_RING(4),
  RIGHT_LITTLE(5),
  LEFT_THUMB(6),
  LEFT_INDEX(7),
  LEFT_MIDDLE(8),
  LEFT_RING(9),
  LEFT_LITTLE(10);

  /** The hand a finger is of. */
  public enum Hand {
    RIGHT,
    LEFT;

    /** The four fingers without the thumb, from left to right as they lie in a slap image. */
    public List<FingerPosition> slapOrder() {
      return shownBy(this == RIGHT ? PLAIN_RIGHT_FOUR : PLAIN_LEFT_FOUR);
    }
  }

  /** The last code that stands for the box of a rolled print. */
  private static final int LAST_ROLLED = 10;

  private static final int PLAIN_RIGHT_THUMB = 11;
  private static final int PLAIN_LEFT_THUMB = 12;
  private static final int PLAIN_RIGHT_FOUR = 13;
  private static final int PLAIN_LEFT_FOUR = 14;
  private static final int PLAIN_THUMBS = 15;

  private final int code;

  FingerPosition(int code) {
    this.code = code;
  }

  /** The code of the finger itself, 1 to 10. */
  public int code() {
    return code;
  }

  /** The hand. */
  public Hand hand() {
    return code <= RIGHT_LITTLE.code ? Hand.RIGHT : Hand.LEFT;
  }

  /** Whether it is a thumb. */
  public boolean isThumb() {
    return this == RIGHT_THUMB || this == LEFT_THUMB;
  }

  /** Which finger of a hand it is: 0 for the thumb to 4 for the little finger. */
  public int indexOnHand() {
    return (code - 1) % 5;
  }

  /** Whether a code stands for the box of one rolled print; 0, a finger not known, does too. */
  public static boolean isRolledBox(int code) {
    return code <= LAST_ROLLED;
  }

  /** The one finger that a code names (1 to 10, or 11 and 12 for the plain thumbs), if any. */
  public static Optional<FingerPosition> ofCode(int code) {
    return switch (code) {
      case PLAIN_RIGHT_THUMB -> Optional.of(RIGHT_THUMB);
      case PLAIN_LEFT_THUMB -> Optional.of(LEFT_THUMB);
      default ->
          code >= 1 && code <= LAST_ROLLED ? Optional.of(values()[code - 1]) : Optional.empty();
    };
  }

  /** The fingers that an image with this code shows, from left to right. */
  public static List<FingerPosition> shownBy(int code) {
    return switch (code) {
      case PLAIN_RIGHT_FOUR -> List.of(RIGHT_INDEX, RIGHT_MIDDLE, RIGHT_RING, RIGHT_LITTLE);
      case PLAIN_LEFT_FOUR -> List.of(LEFT_LITTLE, LEFT_RING, LEFT_MIDDLE, LEFT_INDEX);
      case PLAIN_THUMBS -> List.of(LEFT_THUMB, RIGHT_THUMB);
      default -> ofCode(code).stream().toList();
    };
  }
}
