package ridgeproof.ridges.matching;

import java.util.Optional;
import java.util.function.Function;
import ridgeproof.spec.layout.FingerPosition;

/**
 * Makes second templates of prints, from pixels that are neither smoothed nor masked. A poor print
 * that does not match by the first one often does by the second.
 *
 * @param rolls nothing where the pixels are not at hand
 */
public record SecondLook(
    Function<FingerPosition, Optional<Minutiae>> rolls,
    Function<FingerPosition, Optional<Minutiae>> plains) {

  /** Where no pixels are at hand. */
  public static final SecondLook NONE =
      new SecondLook(finger -> Optional.empty(), finger -> Optional.empty());
}
