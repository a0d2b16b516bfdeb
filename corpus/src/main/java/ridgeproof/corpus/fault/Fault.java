package ridgeproof.corpus.fault;

import java.util.List;

/**
 * One real-life fault and what an examination has to say of it.
 *
 * @param base the clean file that it is made from
 * @param fault what happened, in words
 * @param change what is done to the clean file, step by step
 * @param rules the rules of which one has to come first; none where nothing is to be found
 * @param places where that finding may lie; none where any place will do
 * @param others how many other findings may be new
 * @param open why an examination cannot name it; empty where it has to
 */
public record Fault(
    String id,
    FaultArea area,
    String base,
    String fault,
    String change,
    List<String> rules,
    List<FaultPlace> places,
    int others,
    String open) {

  public Fault {
    rules = List.copyOf(rules);
    places = List.copyOf(places);
  }

  /** Whether the fault is one that no examination can know from the file alone. */
  public boolean isUnknowable() {
    return !open.isEmpty();
  }
}
