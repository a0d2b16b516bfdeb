package ridgeproof.spec.submission;

import java.util.Set;
import ridgeproof.spec.table.Source;

/**
 * A code of scars, marks and tattoos that tells of missing fingers.
 *
 * @param fingers the fingers it may speak of, 1 to 10
 */
public record MissingMark(String mark, Extent extent, Set<Integer> fingers, Source source) {

  /** How many of the fingers are missing. */
  public enum Extent {
    /** Each of them. */
    ALL,
    /** At least one. */
    SOME,
    /** It leaves open which hand, or whether only a joint. */
    PART
  }

  public MissingMark {
    fingers = Set.copyOf(fingers);
  }
}
