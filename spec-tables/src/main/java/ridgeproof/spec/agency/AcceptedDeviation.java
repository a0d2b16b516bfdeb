package ridgeproof.spec.agency;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;

/**
 * What an agency takes for a while although it breaks a rule.
 *
 * @param station words that the station of the file has, such as make and model; empty for any
 * @param lastDay the last day on which it is accepted
 */
public record AcceptedDeviation(
    String ruleId, Optional<String> station, String reason, LocalDate lastDay) {

  /** Whether it holds on that day for a file whose station fields say this. */
  public boolean holds(LocalDate day, String stationOfFile) {
    return !day.isAfter(lastDay)
        && station
            .map(
                words ->
                    stationOfFile.toUpperCase(Locale.ROOT).contains(words.toUpperCase(Locale.ROOT)))
            .orElse(true);
  }

  /** Until when and why, for a report. */
  public String inWords() {
    return "accepted until " + lastDay + ": " + reason;
  }
}
