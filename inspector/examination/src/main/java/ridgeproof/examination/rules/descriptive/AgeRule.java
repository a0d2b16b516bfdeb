package ridgeproof.examination.rules.descriptive;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.rules.Rule;
import ridgeproof.finding.FindingLog;
import ridgeproof.spec.agency.AgencyProfile;
import ridgeproof.spec.descriptive.Plausible;

/** The person is of a plausible age, and so are the prints. */
final class AgeRule implements Rule {

  private static final String BIRTH = "2.022";
  private static final String PRINTED = "2.038";
  private static final String FILE = "1.005";
  private static final String IMPOSSIBLE = "RP-TXN-070";

  @Override
  public Set<String> ids() {
    return Set.of("RP-PTL-023", "RP-PTL-024", IMPOSSIBLE);
  }

  @Override
  public void check(ExaminationInput examinee, FindingLog log) {
    DescriptiveText.of(examinee)
        .ifPresent(
            particulars -> {
              checkPerson(particulars, examinee, log);
              checkPrints(particulars, examinee, log);
            });
  }

  private static void checkPerson(
      DescriptiveText particulars, ExaminationInput examinee, FindingLog log) {
    Optional<Plausible> age =
        examinee.tables().particulars().plausible("age", particulars.kindOfTransaction());
    Optional<Plausible> possible =
        examinee.tables().particulars().plausible("possible-age", particulars.kindOfTransaction());
    Optional<LocalDate> stated = date(particulars, PRINTED);
    Optional<LocalDate> printed = stated.or(() -> date(particulars, FILE));
    if (age.isEmpty() || printed.isEmpty()) {
      return;
    }
    String day = stated.isPresent() ? " on the date printed" : " on the date of the file";
    for (DescriptiveText.Entry entry : particulars.conforming(BIRTH)) {
      Optional<LocalDate> birth = PartialDate.earliest(entry.text());
      if (birth.isEmpty() || birth.get().isAfter(printed.get())) {
        continue;
      }
      long years = ChronoUnit.YEARS.between(birth.get(), printed.get());
      if (possible.isPresent() && !possible.get().holds(years)) {
        report(IMPOSSIBLE, entry, years(years) + day, possible.get(), log);
      } else if (!age.get().holds(years)) {
        report("RP-PTL-023", entry, years(years) + day, age.get(), log);
      }
    }
  }

  private static void report(
      String rule, DescriptiveText.Entry entry, String age, Plausible limit, FindingLog log) {
    log.add(
        rule,
        entry.location(),
        entry.observed(age),
        String.format(Locale.ROOT, "%.0f to %.0f years", limit.least(), limit.most()),
        Optional.of(limit.source()),
        List.of());
  }

  private static String years(long years) {
    return years + (years == 1 ? " year" : " years");
  }

  private static void checkPrints(
      DescriptiveText particulars, ExaminationInput examinee, FindingLog log) {
    Optional<LocalDate> file = date(particulars, FILE);
    Optional<Plausible> limit = printAge(particulars, examinee);
    if (file.isEmpty() || limit.isEmpty()) {
      return;
    }
    for (DescriptiveText.Entry entry : particulars.conforming(PRINTED)) {
      Optional<LocalDate> printed = PartialDate.latest(entry.text());
      if (printed.isEmpty()) {
        continue;
      }
      long days = ChronoUnit.DAYS.between(printed.get(), file.get());
      if (days > limit.get().most()) {
        log.add(
            "RP-PTL-024",
            entry.location(),
            entry.observed(days + (days == 1 ? " day" : " days") + " before the date of the file"),
            String.format(Locale.ROOT, "at most %.0f days", limit.get().most()),
            Optional.of(limit.get().source()),
            List.of());
      }
    }
  }

  /** The agency's limit goes before the usual one. */
  private static Optional<Plausible> printAge(
      DescriptiveText particulars, ExaminationInput examinee) {
    String kind = particulars.kindOfTransaction();
    Optional<AgencyProfile> agency = examinee.options().agency();
    OptionalInt days =
        agency.map(found -> found.limits().printAgeDays()).orElse(OptionalInt.empty());
    return days.isPresent()
        ? Optional.of(
            new Plausible("print-age", kind, 0, days.getAsInt(), "days", agency.get().source()))
        : examinee.tables().particulars().plausible("print-age", kind);
  }

  private static Optional<LocalDate> date(DescriptiveText particulars, String field) {
    return particulars.conforming(field).stream()
        .flatMap(entry -> PartialDate.latest(entry.text()).stream())
        .findFirst();
  }
}
