package ridgeproof.finding;

import java.util.OptionalDouble;

/**
 * A number that a finding rests on.
 *
 * @param unit empty for a plain number
 * @param limit what it was held against, if anything
 */
public record Measure(String name, double value, String unit, OptionalDouble limit) {

  public static Measure of(String name, double value, String unit) {
    return new Measure(name, value, unit, OptionalDouble.empty());
  }

  public static Measure against(String name, double value, String unit, double limit) {
    return new Measure(name, value, unit, OptionalDouble.of(limit));
  }
}
