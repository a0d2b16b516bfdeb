package ridgeproof.spec.layout;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.time.format.ResolverStyle;
import java.util.Locale;
import java.util.Optional;

/** Dates as the standard writes them. */
public final class Calendar {

  private static final DateTimeFormatter YYYYMMDD =
      DateTimeFormatter.ofPattern("uuuuMMdd", Locale.ROOT).withResolverStyle(ResolverStyle.STRICT);

  private Calendar() {}

  /** The day that YYYYMMDD names, if the calendar has it. */
  public static Optional<LocalDate> date(String text) {
    if (text.length() != 8) {
      return Optional.empty();
    }
    try {
      return Optional.of(LocalDate.parse(text, YYYYMMDD));
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }

  static boolean isDate(String text) {
    return date(text).isPresent();
  }
}
