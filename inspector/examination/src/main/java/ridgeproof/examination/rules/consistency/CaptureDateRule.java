package ridgeproof.examination.rules.consistency;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.rules.Rule;
import ridgeproof.finding.FindingLog;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;
import ridgeproof.spec.layout.Calendar;
import ridgeproof.spec.limit.CaptureDateLimit;
import ridgeproof.transaction.record.LogicalRecord;

/** Prints are captured before the transaction is made, and not in another age. */
final class CaptureDateRule implements Rule {

  private static final int DATE_FIELD = 5;

  @Override
  public Set<String> ids() {
    return Set.of("RP-TXN-033", "RP-TXN-034");
  }

  @Override
  public void check(ExaminationInput examinee, FindingLog log) {
    Optional<LocalDate> made =
        examinee
            .transaction()
            .header()
            .flatMap(header -> header.text(DATE_FIELD))
            .flatMap(Calendar::date);
    String day = made.isPresent() ? ", field 1.005" : ", the date of this check";
    LocalDate last = made.orElse(examinee.options().today());
    for (CaptureDateLimit limit : examinee.tables().agreements().captureDates()) {
      for (LogicalRecord record :
          examinee.transaction().recordsOfType(limit.field().recordType())) {
        record
            .text(limit.field().field())
            .flatMap(Calendar::date)
            .ifPresent(captured -> check(record, captured, last, day, limit, log));
      }
    }
  }

  private static void check(
      LogicalRecord record,
      LocalDate captured,
      LocalDate made,
      String day,
      CaptureDateLimit limit,
      FindingLog log) {
    if (captured.isAfter(made.plusDays(limit.daysAfter()))) {
      report("RP-TXN-033", record, captured, "no later than " + made + day, limit, log);
    } else if (captured.isBefore(made.minusYears(limit.maxYears()))) {
      String required =
          String.format(Locale.ROOT, "within %d years before %s", limit.maxYears(), made);
      report("RP-TXN-034", record, captured, required, limit, log);
    }
  }

  private static void report(
      String rule,
      LogicalRecord record,
      LocalDate captured,
      String required,
      CaptureDateLimit limit,
      FindingLog log) {
    log.add(
        rule,
        Location.of(record, record.field(limit.field()).orElseThrow()),
        Observed.of("captured " + captured),
        required,
        Optional.of(limit.source()),
        List.of());
  }
}
