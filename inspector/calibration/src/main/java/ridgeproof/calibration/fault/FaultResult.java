package ridgeproof.calibration.fault;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import ridgeproof.corpus.fault.Fault;
import ridgeproof.examination.Verdict;

/**
 * How one fault fared.
 *
 * @param first what the first new action begins with
 * @param others how many other findings above a note are new
 * @param found every new finding above a note, the first first
 */
public record FaultResult(
    Fault fault,
    FaultOutcome outcome,
    Verdict verdict,
    Optional<NewFinding> first,
    int others,
    List<NewFinding> found) {

  public FaultResult {
    found = List.copyOf(found);
  }

  /** One line for a list of what is not as it should be. */
  public String line() {
    return String.format(
        Locale.ROOT,
        "%s %s (%s; %s): expected %s %s, found %s",
        fault.id(),
        outcome.words(),
        fault.fault(),
        fault.base(),
        fault.rules(),
        fault.places(),
        found.stream().map(NewFinding::toString).limit(6).toList());
  }
}
