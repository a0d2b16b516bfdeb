package ridgeproof.examination.rules.transaction;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.Set;
import ridgeproof.examination.cause.value.StationDates;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.rules.Rule;
import ridgeproof.finding.FindingLog;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;
import ridgeproof.spec.layout.FieldNumber;

/** The time in Greenwich is not after the date of the transaction, nor of another year. */
final class TransactionTimeRule implements Rule {

  /** No place on earth is further than a day from Greenwich. */
  private static final int TIME_ZONE_DAYS = 1;

  private static final FieldNumber GREENWICH = new FieldNumber(1, 14);

  @Override
  public Set<String> ids() {
    return Set.of("RP-TXN-063");
  }

  @Override
  public void check(ExaminationInput examinee, FindingLog log) {
    StationDates dates = StationDates.of(examinee);
    Optional<LocalDate> local = dates.transaction();
    Optional<LocalDate> greenwich = dates.greenwich();
    if (local.isEmpty()
        || greenwich.isEmpty()
        || isPossible(ChronoUnit.DAYS.between(greenwich.get(), local.get()), examinee)) {
      return;
    }
    examinee
        .transaction()
        .header()
        .flatMap(header -> header.field(GREENWICH).map(field -> Location.of(header, field)))
        .ifPresent(
            place ->
                log.add(
                    "RP-TXN-063",
                    place,
                    Observed.of(greenwich.get() + " GMT"),
                    "no later than "
                        + local.get()
                        + ", field 1.005, and at most a year before it"));
  }

  /** A transaction may be prepared long before it is sent, but not after that. */
  private static boolean isPossible(long daysBefore, ExaminationInput examinee) {
    return daysBefore >= -TIME_ZONE_DAYS
        && daysBefore <= examinee.tables().agreements().threshold("greenwich-before-date");
  }
}
