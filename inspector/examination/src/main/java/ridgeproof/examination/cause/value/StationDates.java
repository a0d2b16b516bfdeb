package ridgeproof.examination.cause.value;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.spec.layout.Calendar;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.limit.CaptureDateLimit;
import ridgeproof.transaction.record.LogicalRecord;

/**
 * The dates that a station writes by its clock: of the transaction, in Greenwich time, of capture,
 * and the date printed, which operators mostly leave as the station fills it in.
 */
public record StationDates(Optional<LocalDate> transaction, List<Dated> others) {

  static final FieldNumber DATE = new FieldNumber(1, 5);
  private static final FieldNumber GREENWICH = new FieldNumber(1, 14);
  private static final FieldNumber PRINTED = new FieldNumber(2, 38);
  private static final int DATE_LENGTH = 8;

  /** A day and the field that names it. */
  record Dated(FieldNumber field, LocalDate day) {}

  public static StationDates of(ExaminationInput examinee) {
    List<Dated> others = new ArrayList<>();
    add(examinee, GREENWICH, others);
    add(examinee, PRINTED, others);
    for (CaptureDateLimit limit : examinee.tables().agreements().captureDates()) {
      add(examinee, limit.field(), others);
    }
    List<Dated> own = new ArrayList<>();
    add(examinee, DATE, own);
    return new StationDates(own.stream().map(Dated::day).findFirst(), List.copyOf(others));
  }

  private static void add(ExaminationInput examinee, FieldNumber field, List<Dated> dates) {
    for (LogicalRecord record : examinee.transaction().recordsOfType(field.recordType())) {
      record
          .text(field.field())
          .filter(text -> text.length() >= DATE_LENGTH)
          .flatMap(text -> Calendar.date(text.substring(0, DATE_LENGTH)))
          .ifPresent(day -> dates.add(new Dated(field, day)));
    }
  }

  public Optional<LocalDate> greenwich() {
    return others.stream()
        .filter(dated -> dated.field().equals(GREENWICH))
        .map(Dated::day)
        .findFirst();
  }
}
