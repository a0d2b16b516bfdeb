package ridgeproof.spec.xml;

import java.time.DateTimeException;
import java.time.LocalDate;

/** Whether a day is one of the calendar. */
final class Days {

  private Days() {}

  /**
   * @param digits eight digits, year, month and day
   */
  static boolean exists(String digits) {
    try {
      LocalDate.of(
          Integer.parseInt(digits.substring(0, 4)),
          Integer.parseInt(digits.substring(4, 6)),
          Integer.parseInt(digits.substring(6, 8)));
      return true;
    } catch (NumberFormatException | DateTimeException e) {
      return false;
    }
  }
}
