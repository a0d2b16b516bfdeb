package ridgeproof.corpus.finger;

/**
 * A place where a ridge ends or forks.
 *
 * @param x pixels from the left
 * @param y pixels from the top
 * @param angleDegrees 0 to 360, counter-clockwise from the right: for an ending along the ridge,
 *     away from its end; for a bifurcation along the valley between the branches (the convention of
 *     INCITS 378, from memory)
 */
public record TrueMinutia(double x, double y, double angleDegrees, Kind kind) {

  /** What the ridge does there. */
  public enum Kind {
    ENDING,
    BIFURCATION
  }
}
