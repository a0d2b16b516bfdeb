package ridgeproof.ledger.health;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * Something about a station or an operator.
 *
 * @param operator keyed hash of the operator it is about; empty where it is about the station
 * @param station name of the station; empty text where it is about an operator
 * @param since the first day of the change, where there is a change
 * @param until the last day, where it has passed
 * @param observed figures with units
 * @param probability of such figures without a fault, as a bound over all that was tested
 * @param alsoChanged faults that came at the same time and are taken for the same event
 * @param evidence what its picture shows
 */
public record HealthFinding(
    StationFault fault,
    String station,
    Optional<String> operator,
    Optional<LocalDate> since,
    Optional<LocalDate> until,
    String observed,
    double probability,
    List<StationFault> alsoChanged,
    Evidence evidence) {

  public HealthFinding {
    alsoChanged = List.copyOf(alsoChanged);
  }

  HealthFinding explaining(List<StationFault> others) {
    return new HealthFinding(
        fault, station, operator, since, until, observed, probability, others, evidence);
  }
}
