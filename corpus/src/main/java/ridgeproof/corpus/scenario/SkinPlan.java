package ridgeproof.corpus.scenario;

import ridgeproof.corpus.finger.SeededRandom;
import ridgeproof.corpus.finger.Skin;
import ridgeproof.corpus.impression.Traces;

/**
 * What the skin of the subject is like. What is not given is drawn for the age; without an age it
 * is young and smooth.
 *
 * @param age years, 0 for none
 * @param creases fine white lines across a finger, 0 to 60
 * @param wear 0 to 1
 * @param scars of each finger, 0 to 4
 * @param belowCrease skin below the flexion crease, 0.34 to 1.5 of the length above it
 * @param speckle of dry skin, 0 to 1
 * @param halo of sweat, 0 to 1
 * @param unevenness of the pressure, 0 to 1
 * @param lightness of plain prints, 0 to 1
 */
public record SkinPlan(
    int age,
    Integer creases,
    Double wear,
    Integer scars,
    Double belowCrease,
    Double speckle,
    Double halo,
    Double unevenness,
    Double lightness) {

  private static final int OLDEST = 120;

  public SkinPlan {
    Defaults.within("age", age, 0, OLDEST);
  }

  /** As it was before skin could be told: neither creases nor wear. */
  static SkinPlan smooth() {
    return ofAge(0);
  }

  /** Everything drawn for an age. */
  public static SkinPlan ofAge(int age) {
    return new SkinPlan(age, null, null, null, null, null, null, null, null);
  }

  /** The skin itself, the same on all prints of a person. */
  public Skin skin(long person) {
    Skin drawn = age == 0 ? Skin.smooth() : Skin.ofAge(age, new SeededRandom(person, 41));
    return new Skin(
        Defaults.orElse(creases, drawn.creases()),
        Defaults.orElse(wear, drawn.wear()),
        Defaults.orElse(scars, drawn.scars()),
        Defaults.orElse(belowCrease, drawn.belowCrease()));
  }

  /** What it leaves on one capture. */
  public Traces traces(long capture) {
    Traces drawn = age == 0 ? Traces.none() : Traces.ofAge(age, new SeededRandom(capture, 42));
    return new Traces(
        Defaults.orElse(speckle, drawn.speckle()),
        Defaults.orElse(halo, drawn.halo()),
        Defaults.orElse(unevenness, drawn.unevenness()),
        Defaults.orElse(lightness, drawn.lightness()));
  }
}
