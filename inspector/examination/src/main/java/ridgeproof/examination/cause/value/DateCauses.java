package ridgeproof.examination.cause.value;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Predicate;
import ridgeproof.examination.cause.CauseLog;
import ridgeproof.examination.cause.CauseRule;
import ridgeproof.examination.cause.Consequences;
import ridgeproof.examination.cause.value.StationDates.Dated;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.finding.Finding;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;

/** One wrong clock or one wrong date makes all that is compared with it look wrong. */
public final class DateCauses implements CauseRule {

  private static final String FUTURE = "RP-TXN-061";
  private static final String CLOCK = "RP-TXN-062";
  private static final String ODD_ONE = "RP-TXN-064";

  /** It may be a day later already where the file was made. */
  private static final int TIME_ZONE_DAYS = 1;

  /** A transaction may be finished a few days after the capture. */
  private static final int SAME_SITTING_DAYS = 7;

  /** Findings that compare something with the date of the transaction. */
  private static final Consequences OF_TRANSACTION_DATE =
      Consequences.ofRules("RP-TXN-033", "RP-TXN-034", "RP-TXN-063", "RP-PTL-024");

  @Override
  public Set<String> ids() {
    return Set.of(FUTURE, CLOCK, ODD_ONE);
  }

  @Override
  public void establish(ExaminationInput examinee, List<Finding> found, CauseLog causes) {
    StationDates dates = StationDates.of(examinee);
    if (dates.transaction().isEmpty()) {
      return;
    }
    LocalDate made = dates.transaction().get();
    LocalDate asOf = examinee.options().today();
    Predicate<Dated> inFuture = date -> isAfter(date.day(), asOf);
    boolean future = isAfter(made, asOf);
    if (future && !dates.others().isEmpty() && dates.others().stream().allMatch(inFuture)) {
      add(CLOCK, examinee, days(asOf, made), "no later than " + asOf, causes, ofClock());
    } else if (future) {
      add(FUTURE, examinee, days(asOf, made), "no later than " + asOf, causes, ofFuture());
    } else if (isOddOne(dates, made)) {
      LocalDate other = dates.others().get(0).day();
      String required = "a date close to the other dates in the file, " + other;
      add(ODD_ONE, examinee, days(other, made), required, causes, ofOddOne());
    }
  }

  private static boolean isAfter(LocalDate day, LocalDate limit) {
    return day.isAfter(limit.plusDays(TIME_ZONE_DAYS));
  }

  /** Whether dates of two fields or more agree with each other, and this one precedes them all. */
  private static boolean isOddOne(StationDates dates, LocalDate made) {
    List<LocalDate> others = dates.others().stream().map(Dated::day).sorted().toList();
    long fields = dates.others().stream().map(Dated::field).distinct().count();
    return fields > 1
        && isAfter(others.get(0), made)
        && ChronoUnit.DAYS.between(others.get(0), others.get(others.size() - 1))
            <= SAME_SITTING_DAYS;
  }

  private static Consequences ofClock() {
    return OF_TRANSACTION_DATE.or(Consequences.ofRules("RP-PTL-021", "RP-PTL-023"));
  }

  private static Consequences ofFuture() {
    return OF_TRANSACTION_DATE;
  }

  /** Also what lies after the date of the transaction and would not after the other dates. */
  private static Consequences ofOddOne() {
    return OF_TRANSACTION_DATE.or(
        Consequences.ofRules("RP-PTL-020", "RP-PTL-021", "RP-PTL-022")
            .onlyWhere(finding -> finding.required().contains(StationDates.DATE.toString())));
  }

  private static Observed days(LocalDate from, LocalDate to) {
    long days = ChronoUnit.DAYS.between(from, to);
    return Observed.of(
        String.format(
            Locale.ROOT,
            "%s, %,d %s %s %s",
            to,
            Math.abs(days),
            Math.abs(days) == 1 ? "day" : "days",
            days < 0 ? "before" : "after",
            from));
  }

  private static void add(
      String rule,
      ExaminationInput examinee,
      Observed observed,
      String required,
      CauseLog causes,
      Consequences consequences) {
    Location place =
        examinee
            .transaction()
            .header()
            .flatMap(
                header -> header.field(StationDates.DATE).map(field -> Location.of(header, field)))
            .orElse(Location.file());
    causes.add(rule, place, observed, required, List.of(), consequences);
  }
}
