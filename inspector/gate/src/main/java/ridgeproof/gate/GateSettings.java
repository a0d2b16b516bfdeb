package ridgeproof.gate;

import java.time.Clock;
import java.time.Duration;
import java.util.List;

/**
 * How a gate works.
 *
 * @param settle how long a file must stay as it is before it is taken
 * @param maxFileBytes a larger file is held without being examined
 * @param reasons for which a person may let a held file go; the agency's list
 */
public record GateSettings(Duration settle, long maxFileBytes, List<String> reasons, Clock clock) {

  public GateSettings {
    reasons = List.copyOf(reasons);
  }
}
