package ridgeproof.corpus.fault;

import java.util.List;

/**
 * What a fault comes to in XML, where that is not what it is in the traditional encoding.
 *
 * @param change what is done to the file instead; empty for the same steps
 * @param rules the rules of which one comes first in XML; none where XML cannot have the fault
 * @param why in words
 */
public record FaultInXml(String id, String change, List<String> rules, String why) {

  public FaultInXml {
    rules = List.copyOf(rules);
  }

  /** Whether a file in XML can have the fault. */
  public boolean exists() {
    return !rules.isEmpty();
  }
}
