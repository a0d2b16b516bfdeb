package ridgeproof.corpus.finger;

/**
 * A point where the ridge orientation is undefined.
 *
 * @param x pixels from the left
 * @param y pixels from the top
 */
public record TrueSingularPoint(double x, double y, Kind kind) {

  /** A core turns the orientation by half a turn one way, a delta the other way. */
  public enum Kind {
    CORE,
    DELTA
  }
}
