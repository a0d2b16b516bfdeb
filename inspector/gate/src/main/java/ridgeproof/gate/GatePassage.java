package ridgeproof.gate;

/**
 * What became of a file in one look at the folders.
 *
 * @param name as the station called it
 * @param outcome where it went
 * @param as its name there
 * @param verdict in one word; empty where something went wrong
 * @param step what to do first, or what went wrong
 */
public record GatePassage(String name, Outcome outcome, String as, String verdict, String step) {

  /** Where a file went. */
  public enum Outcome {
    READY,
    HOLD,
    /** It is where it was, and is tried again. */
    PROBLEM
  }
}
