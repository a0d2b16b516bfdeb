package ridgeproof.corpus.finger;

/**
 * What the years have left on the skin of a person, and how much skin is kept.
 *
 * @param creases fine white lines across a finger, 0 to 60 each
 * @param wear 0 whole ridges to 1 worn down in patches
 * @param scars of a finger, 0 to 4 each
 * @param belowCrease skin kept below the flexion crease, 0.34 to 1.5 of the length above it
 */
public record Skin(int creases, double wear, int scars, double belowCrease) {

  /** Enough for what a careful roll shows of the next phalanx. */
  private static final double USUAL_BELOW = 0.34;

  private static final int MAX_CREASES = 60;

  public Skin {
    within("creases", creases, 0, MAX_CREASES);
    within("wear", wear, 0, 1);
    within("scars", scars, 0, 4);
    within("skin below the crease", belowCrease, USUAL_BELOW, 1.5);
  }

  private static void within(String what, double value, double low, double high) {
    if (!(value >= low && value <= high)) {
      throw new IllegalArgumentException(what + " of " + value + ", not " + low + " to " + high);
    }
  }

  /** Skin without a trace of age. */
  public static Skin smooth() {
    return new Skin(0, 0, 0, USUAL_BELOW);
  }

  /**
   * Drawn for an age: creases and wear come after thirty and differ more from person to person the
   * older people are (common practice).
   *
   * @param age years
   */
  public static Skin ofAge(int age, SeededRandom dice) {
    double years = years(age);
    double creases = dice.between(1, 9) + 32 * years * years * dice.between(0.3, 1.3);
    double wear = years * dice.between(0, 0.75);
    boolean scar = dice.chance(0.05 + 0.1 * years);
    double below = dice.chance(0.4) ? dice.between(0.5, 1.1) : USUAL_BELOW;
    return new Skin((int) Math.min(MAX_CREASES, creases), wear, scar ? 1 : 0, below);
  }

  /** 0 at twenty to 1 at eighty. */
  public static double years(int age) {
    return Math.max(0, Math.min(1, (age - 20) / 60.0));
  }
}
