package ridgeproof.examination.rules.descriptive;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.rules.Rule;
import ridgeproof.finding.FindingLog;
import ridgeproof.finding.Location;
import ridgeproof.spec.descriptive.DateOrder;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.layout.FieldRow;
import ridgeproof.spec.layout.Reference;

/** Dates follow each other as events do. */
final class DateOrderRule implements Rule {

  /** It may be a day later already where the file was made. */
  private static final int TIME_ZONE_DAYS = 1;

  @Override
  public Set<String> ids() {
    return new TreeSet<>(Set.of("RP-PTL-020", "RP-PTL-021", "RP-PTL-022"));
  }

  @Override
  public void check(ExaminationInput examinee, FindingLog log) {
    Optional<DescriptiveText> particulars = DescriptiveText.of(examinee);
    if (particulars.isEmpty()) {
      return;
    }
    Set<Location> reported = new HashSet<>();
    for (DateOrder order : examinee.tables().particulars().dateOrders()) {
      Optional<LocalDate> limit = limit(order, particulars.get(), examinee);
      for (DescriptiveText.Entry entry : particulars.get().conforming(order.earlier())) {
        boolean late =
            limit.isPresent()
                && PartialDate.earliest(entry.text())
                    .filter(date -> date.isAfter(limit.get()))
                    .isPresent();
        if (late && reported.add(entry.location())) {
          log.add(
              order.rule(),
              entry.location(),
              entry.observed(),
              required(order, examinee),
              Optional.of(order.source()),
              List.of());
        }
      }
    }
  }

  private static Optional<LocalDate> limit(
      DateOrder order, DescriptiveText particulars, ExaminationInput examinee) {
    if (order.later().isEmpty()) {
      return Optional.of(examinee.options().today().plusDays(TIME_ZONE_DAYS));
    }
    return particulars.conforming(new Reference.OfField(order.later().get())).stream()
        .flatMap(entry -> PartialDate.latest(entry.text()).stream())
        .findFirst();
  }

  private static String required(DateOrder order, ExaminationInput examinee) {
    if (order.later().isEmpty()) {
      return "no later than today, "
          + examinee.options().today().format(DateTimeFormatter.BASIC_ISO_DATE);
    }
    FieldNumber later = order.later().get();
    String name =
        examinee
            .tables()
            .layout(later.recordType())
            .field(later, examinee.transaction().version())
            .map(FieldRow::name)
            .orElse("date");
    return "no later than field " + later + " (" + name + ")";
  }
}
