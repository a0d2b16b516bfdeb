package ridgeproof.examination.rules.descriptive;

import java.time.LocalDate;
import java.util.Optional;
import ridgeproof.spec.layout.Calendar;

/** Dates of the Type-2 record, whose day may be unknown: 19900200 is February 1990. */
final class PartialDate {

  private static final String UNKNOWN_DAY = "00";
  private static final int MONTH_LENGTH = 6;

  private PartialDate() {}

  /** The first day that the text may mean; none where it is no date or unknown. */
  static Optional<LocalDate> earliest(String text) {
    return hasNoDay(text)
        ? Calendar.date(text.substring(0, MONTH_LENGTH) + "01")
        : Calendar.date(text);
  }

  /** The last day that the text may mean; none where it is no date or unknown. */
  static Optional<LocalDate> latest(String text) {
    return hasNoDay(text)
        ? earliest(text).map(first -> first.withDayOfMonth(first.lengthOfMonth()))
        : Calendar.date(text);
  }

  private static boolean hasNoDay(String text) {
    return text.length() == MONTH_LENGTH + 2 && text.endsWith(UNKNOWN_DAY);
  }
}
