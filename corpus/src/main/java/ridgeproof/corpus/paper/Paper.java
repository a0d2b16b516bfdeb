package ridgeproof.corpus.paper;

import ridgeproof.corpus.finger.SeededRandom;

/**
 * What a card of paper shows besides prints.
 *
 * @param words lines of print, 0 to 3
 * @param handwriting strokes of a pen, 0 to 4
 * @param rulings lines of the form, 0 to 4
 * @param holes punched through it, 0 to 2
 */
public record Paper(int words, int handwriting, int rulings, int holes) {

  public Paper {
    within("words", words, 0, 3);
    within("handwriting", handwriting, 0, 4);
    within("rulings", rulings, 0, 4);
    within("holes", holes, 0, 2);
  }

  private static void within(String what, int value, int low, int high) {
    if (value < low || value > high) {
      throw new IllegalArgumentException(what + " of " + value + ", not " + low + " to " + high);
    }
  }

  /** The bare platen of a live-scan device. */
  public static Paper none() {
    return new Paper(0, 0, 0, 0);
  }

  /** Whether it shows nothing. */
  public boolean isBare() {
    return words + handwriting + rulings + holes == 0;
  }

  /** A box of an ink card: its title and rulings, seldom writing, more seldom a hole. */
  public static Paper ofCard(SeededRandom dice) {
    return new Paper(
        1,
        dice.chance(0.3) ? 1 + dice.below(2) : 0,
        dice.chance(0.7) ? 1 + dice.below(2) : 0,
        dice.chance(0.08) ? 1 : 0);
  }
}
