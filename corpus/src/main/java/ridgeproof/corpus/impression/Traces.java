package ridgeproof.corpus.impression;

import ridgeproof.corpus.finger.SeededRandom;
import ridgeproof.corpus.finger.Skin;

/**
 * What the state of the skin leaves on one capture, 0 nothing to 1 the worst of a print that still
 * matches.
 *
 * @param speckle dry skin takes ink in specks, and sheds specks
 * @param halo a film of sweat around the print
 * @param unevenness one side of the finger is pressed more than the other, and it takes in patches
 * @param lightness a plain print is laid down so lightly that little of its sides touches
 */
public record Traces(double speckle, double halo, double unevenness, double lightness) {

  public Traces {
    ImpressionSettings.within("speckle", speckle, 0, 1);
    ImpressionSettings.within("halo", halo, 0, 1);
    ImpressionSettings.within("unevenness", unevenness, 0, 1);
    ImpressionSettings.within("lightness", lightness, 0, 1);
  }

  /** None. */
  public static Traces none() {
    return new Traces(0, 0, 0, 0);
  }

  /**
   * Drawn for an age: old skin is dry, young skin sweats (common practice).
   *
   * @param age years
   */
  public static Traces ofAge(int age, SeededRandom dice) {
    double years = Skin.years(age);
    return new Traces(
        Math.min(1, dice.between(0, 0.2) + years * dice.between(0, 0.8)),
        (1 - 0.8 * years) * dice.between(0, 0.8),
        dice.between(0.2, 1),
        dice.between(0.2, 1));
  }
}
