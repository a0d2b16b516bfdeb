package ridgeproof.examination.safecopy;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import ridgeproof.spec.layout.Calendar;

/**
 * Dates in the place of others, in the same order: those up to the date of the transaction are
 * moved back, those after it forward, and those of long ago (births) further back. What is no date
 * of the calendar stays none, in the same way.
 */
final class SyntheticDates {

  private static final int MIN_MOVED = 400;
  private static final int MAX_MOVED = 2000;
  private static final int LONG_AGO_DAYS = 5 * 365;
  private static final int MAX_MOVED_FURTHER = 2000;
  private static final int ATTEMPTS = 100;

  /** Where year, month and day begin: as the standard has it, day first, month first. */
  private static final List<int[]> FORMS =
      List.of(new int[] {0, 4, 6}, new int[] {4, 2, 0}, new int[] {4, 0, 2});

  private final KeyedRandom secret;
  private final LocalDate pivot;
  private final int back;
  private final int forward;
  private final int furtherBack;

  /**
   * @param pivot the date of the transaction
   * @param dates all that the file holds, none of which comes out again
   */
  SyntheticDates(KeyedRandom secret, LocalDate pivot, Set<LocalDate> dates) {
    this.secret = secret;
    this.pivot = pivot;
    int attempt = 0;
    Moves moves = Moves.of(secret, attempt);
    while (attempt < ATTEMPTS && meets(moves, dates)) {
      moves = Moves.of(secret, ++attempt);
    }
    this.back = moves.back();
    this.forward = moves.forward();
    this.furtherBack = moves.furtherBack();
  }

  private record Moves(int back, int forward, int furtherBack) {
    static Moves of(KeyedRandom secret, int attempt) {
      Random random = secret.random("dates", "", attempt);
      int span = MAX_MOVED - MIN_MOVED;
      return new Moves(
          MIN_MOVED + random.nextInt(span),
          MIN_MOVED + random.nextInt(span),
          random.nextInt(MAX_MOVED_FURTHER));
    }
  }

  private boolean meets(Moves moves, Set<LocalDate> dates) {
    Set<LocalDate> moved = new HashSet<>();
    for (LocalDate date : dates) {
      moved.add(moved(date, moves.back(), moves.forward(), moves.furtherBack()));
    }
    moved.retainAll(dates);
    return !moved.isEmpty();
  }

  private LocalDate moved(LocalDate date, int daysBack, int daysForward, int daysFurther) {
    if (date.isAfter(pivot)) {
      return date.plusDays(daysForward);
    }
    boolean longAgo = date.isBefore(pivot.minusDays(LONG_AGO_DAYS));
    return date.minusDays(daysBack).minusDays(longAgo ? daysFurther : 0);
  }

  /** Eight digits in the place of eight digits. */
  String inPlaceOf(String eightDigits) {
    for (int[] form : FORMS) {
      Optional<LocalDate> date = read(eightDigits, form);
      if (date.isPresent()) {
        return written(moved(date.get(), back, forward, furtherBack), form);
      }
    }
    if (eightDigits.endsWith("00")) {
      Optional<LocalDate> month = read(eightDigits.substring(0, 6) + "01", FORMS.get(0));
      if (month.isPresent()) {
        String made = written(moved(month.get(), back, forward, furtherBack), FORMS.get(0));
        return made.substring(0, 6) + "00";
      }
    }
    return eightDigits.chars().allMatch(c -> c == '0') ? eightDigits : noDate(eightDigits);
  }

  /**
   * A time of day that exists for one that does, digit for digit.
   *
   * @param clock six digits
   */
  String clockInPlaceOf(String clock) {
    Random random = secret.random("clock", clock, 0);
    StringBuilder made = new StringBuilder();
    int[] ends = {24, 60, 60};
    for (int i = 0; i < ends.length; i++) {
      String part = clock.substring(2 * i, 2 * i + 2);
      boolean possible = Integer.parseInt(part) < ends[i];
      made.append(possible ? String.format(Locale.ROOT, "%02d", random.nextInt(ends[i])) : part);
    }
    return made.toString();
  }

  /**
   * The pieces stand at these places: four digits of the year, two of the month, two of the day.
   */
  private static Optional<LocalDate> read(String text, int[] form) {
    int year = Integer.parseInt(text.substring(form[0], form[0] + 4));
    // Turned round, only a year of people alive makes a date of it.
    return year < 1850 || year > 2199
        ? Optional.empty()
        : Calendar.date(
            text.substring(form[0], form[0] + 4)
                + text.substring(form[1], form[1] + 2)
                + text.substring(form[2], form[2] + 2));
  }

  private static String written(LocalDate date, int[] form) {
    char[] text = new char[8];
    put(text, form[0], String.format(Locale.ROOT, "%04d", date.getYear()));
    put(text, form[1], String.format(Locale.ROOT, "%02d", date.getMonthValue()));
    put(text, form[2], String.format(Locale.ROOT, "%02d", date.getDayOfMonth()));
    return new String(text);
  }

  private static void put(char[] text, int at, String digits) {
    digits.getChars(0, digits.length(), text, at);
  }

  private String noDate(String text) {
    Random random = secret.random("no date", text, 0);
    int year = Integer.parseInt(text.substring(0, 4));
    int month = Integer.parseInt(text.substring(4, 6));
    int day = Integer.parseInt(text.substring(6));
    boolean monthExists = month >= 1 && month <= 12;
    boolean wasDate = Calendar.date(text).isPresent();
    String other = text;
    for (int i = 0; i < ATTEMPTS && isTaken(other, text, wasDate); i++) {
      int newYear = year / 100 * 100 + random.nextInt(100);
      int newMonth = monthExists ? 1 + random.nextInt(12) : month;
      int newDay = day >= 1 && day <= 28 ? 1 + random.nextInt(28) : otherDay(day, random);
      other = String.format(Locale.ROOT, "%04d%02d%02d", newYear, newMonth, newDay);
    }
    return other;
  }

  private static boolean isTaken(String other, String text, boolean wasDate) {
    return other.equals(text) || Calendar.date(other).isPresent() != wasDate;
  }

  /** 00 says that the day is not known; days past the month's end stay there. */
  private static int otherDay(int day, Random random) {
    return day == 0 ? 0 : day <= 31 ? 29 + random.nextInt(3) : 32 + random.nextInt(68);
  }

  /** Every date of the calendar among these values, whichever way round. */
  static Set<LocalDate> datesIn(List<String> values) {
    Set<LocalDate> dates = new HashSet<>();
    for (String value : values) {
      String digits = value.length() >= 8 ? value.substring(0, 8) : "";
      if (!digits.isEmpty() && digits.chars().allMatch(c -> c >= '0' && c <= '9')) {
        FORMS.forEach(form -> read(digits, form).ifPresent(dates::add));
      }
    }
    return dates;
  }

  /** The date of the transaction; the latest of all where the file states none. */
  static LocalDate pivot(Optional<String> stated, Set<LocalDate> dates) {
    return stated
        .flatMap(Calendar::date)
        .or(() -> dates.stream().max(LocalDate::compareTo))
        .orElse(LocalDate.EPOCH);
  }
}
