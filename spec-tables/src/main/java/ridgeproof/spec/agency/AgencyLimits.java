package ridgeproof.spec.agency;

import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;

/**
 * Limits that the agency sets instead of the published ones.
 *
 * @param compression greatest ratio of uncompressed to compressed bytes, by image format
 * @param resolutions accepted resolutions of prints in ppi; none to accept the published ones
 * @param printAgeDays most days from the date printed to the date of the file
 * @param fingerMatch similarity from which two prints count as of one finger
 */
public record AgencyLimits(
    Map<String, Double> compression,
    Set<Integer> resolutions,
    OptionalInt printAgeDays,
    OptionalDouble fingerMatch) {

  /** Limits of nothing. */
  static final AgencyLimits NONE =
      new AgencyLimits(Map.of(), Set.of(), OptionalInt.empty(), OptionalDouble.empty());

  public AgencyLimits {
    compression = Map.copyOf(compression);
    resolutions = Set.copyOf(resolutions);
  }
}
