package ridgeproof.report.summary;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import java.util.stream.Stream;
import ridgeproof.examination.FindingsReport;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.limit.CaptureDateLimit;

/** The day on which the prints of a file were captured. */
final class CaptureDay {

  private static final FieldNumber FILE_DATE = new FieldNumber(1, 5);

  private CaptureDay() {}

  /** The first day that an image states; without one the day of the file. */
  static Optional<LocalDate> of(FindingsReport report) {
    Stream<FieldNumber> captured =
        report.tables().agreements().captureDates().stream().map(CaptureDateLimit::field);
    return captured
        .flatMap(field -> days(report, field))
        .min(LocalDate::compareTo)
        .or(() -> days(report, FILE_DATE).findFirst());
  }

  /** Days that may be shown, and that somebody can have captured on. */
  private static Stream<LocalDate> days(FindingsReport report, FieldNumber field) {
    int version = report.transaction().version();
    if (!report.tables().layout(field.recordType()).isPublic(field, version)) {
      return Stream.empty();
    }
    return report.transaction().recordsOfType(field.recordType()).stream()
        .flatMap(record -> record.text(field.field()).stream())
        .flatMap(text -> day(text).stream())
        .filter(day -> !day.isAfter(report.asOf().plusDays(1)));
  }

  private static Optional<LocalDate> day(String text) {
    try {
      return Optional.of(LocalDate.parse(text.strip(), DateTimeFormatter.BASIC_ISO_DATE));
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }
}
