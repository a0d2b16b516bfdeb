package ridgeproof.spec.layout;

import java.time.LocalDate;
import java.util.Optional;

/** Dates as the standard writes them. */
public final class Calendar {

  private Calendar() {}

  /** The day that YYYYMMDD names, if the calendar has it. */
  public static Optional<LocalDate> date(String text) {
    if (text.length() != 8 || !CharacterType.N.allows(text)) {
      return Optional.empty();
    }
    // Not by a formatter of the JDK, whose first use takes longer than all dates of a file.
    int number = Integer.parseInt(text);
    int year = number / 10_000;
    int month = number / 100 % 100;
    int day = number % 100;
    if (month < 1 || month > 12) {
      return Optional.empty();
    }
    LocalDate first = LocalDate.of(year, month, 1);
    return day < 1 || day > first.lengthOfMonth()
        ? Optional.empty()
        : Optional.of(first.withDayOfMonth(day));
  }

  static boolean isDate(String text) {
    return date(text).isPresent();
  }
}
