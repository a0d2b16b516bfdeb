package ridgeproof.ridges.pattern;

/**
 * A core or delta of the ridge flow.
 *
 * @param kind core or delta
 * @param x pixels from the left edge of the image
 * @param y pixels from the top edge of the image
 * @param degrees for a core where its loop opens to, clockwise from straight right as seen on the
 *     image, 0..360; 0 for a delta
 */
public record SingularPoint(Kind kind, double x, double y, double degrees) {

  /** Kinds of singular points. */
  public enum Kind {
    /** Ridges turn by half a turn around it: Poincare index 1/2. */
    CORE,
    /** Ridges part in three around it: Poincare index -1/2. */
    DELTA
  }
}
