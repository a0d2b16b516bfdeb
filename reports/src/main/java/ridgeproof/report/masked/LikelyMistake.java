package ridgeproof.report.masked;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import ridgeproof.spec.layout.Calendar;
import ridgeproof.spec.layout.FieldRow;

/** Guesses what is wrong with a value by what would mend it; the words never show the value. */
public final class LikelyMistake {

  private static final String A_DATE = "20000131";
  private static final String NO_DATE = "20001331";
  private static final int DATE_LENGTH = 8;
  private static final int MONTHS = 12;
  private static final int DAYS = 31;

  /** Among orders of day, month, and year only dates of these years are likely. */
  private static final int MIN_YEAR = 1900;

  private static final int MAX_YEAR = 2099;

  private static final Pattern SPACED_DATE = Pattern.compile(" *[0-9]{8} *");
  private static final Pattern PARTED_DATE =
      Pattern.compile("[0-9]{4}[^0-9]*[0-9]{2}[^0-9]*[0-9]{2}");

  /** Each correction, and what is wrong where it makes the value acceptable. */
  private static final Map<String, UnaryOperator<String>> CORRECTIONS = corrections();

  private LikelyMistake() {}

  private static Map<String, UnaryOperator<String>> corrections() {
    Map<String, UnaryOperator<String>> corrections = new LinkedHashMap<>();
    corrections.put("It begins or ends with a space.", String::strip);
    corrections.put("It contains lowercase letters.", text -> text.toUpperCase(Locale.ROOT));
    corrections.put("It contains spaces.", text -> text.replace(" ", ""));
    corrections.put(
        "It contains the letter O where a zero belongs.",
        text -> text.replace('O', '0').replace('o', '0'));
    corrections.put("It contains punctuation.", text -> text.replaceAll("[\\p{Punct}&&[^,]]", ""));
    corrections.put("It contains digits.", text -> text.replaceAll("[0-9]", ""));
    corrections.put("It contains letters.", text -> text.replaceAll("[A-Za-z]", ""));
    corrections.put(
        "It contains an accented or special character.",
        text -> text.replaceAll("[^\\x20-\\x7E]", ""));
    return corrections;
  }

  /** What is likely wrong, as a sentence; empty where nothing can be said. */
  public static Optional<String> of(String text, FieldRow row) {
    return isDate(row) ? ofDate(text) : ofText(text, row);
  }

  private static boolean isDate(FieldRow row) {
    return row.values()
        .filter(rule -> rule.matchesText(A_DATE) && !rule.matchesText(NO_DATE))
        .isPresent();
  }

  private static Optional<String> ofDate(String text) {
    String digits = text.replaceAll("[^0-9]", "");
    if (!digits.equals(text) && Calendar.date(digits).isPresent()) {
      return Optional.of(besideDigits(text));
    }
    if (digits.length() != DATE_LENGTH) {
      return Optional.of(
          digits.length() == DATE_LENGTH - 2
              ? "The year may have only two digits."
              : "It does not have eight digits.");
    }
    String year = digits.substring(0, 4);
    String month = digits.substring(4, 6);
    String day = digits.substring(6);
    if (isLikely(year + day + month)) {
      return Optional.of("The day and month look swapped.");
    }
    String last = digits.substring(4);
    if (isLikely(last + digits.substring(0, 2) + digits.substring(2, 4))
        || isLikely(last + digits.substring(2, 4) + digits.substring(0, 2))) {
      return Optional.of("The year looks to be at the end; it belongs first.");
    }
    int number = Integer.parseInt(month);
    if (number < 1 || number > MONTHS) {
      return Optional.of("The month is not between 01 and 12.");
    }
    int ofMonth = Integer.parseInt(day);
    return Optional.of(
        ofMonth < 1 || ofMonth > DAYS
            ? "The day is not between 01 and 31."
            : "The month does not have that day.");
  }

  /** What a date has besides its digits. */
  private static String besideDigits(String text) {
    if (SPACED_DATE.matcher(text).matches()) {
      return "It begins or ends with a space.";
    }
    return PARTED_DATE.matcher(text).matches()
        ? "It contains characters between year, month, and day."
        : "It contains characters other than digits.";
  }

  private static boolean isLikely(String date) {
    return Calendar.date(date)
        .filter(day -> day.getYear() >= MIN_YEAR && day.getYear() <= MAX_YEAR)
        .isPresent();
  }

  private static Optional<String> ofText(String text, FieldRow row) {
    for (Map.Entry<String, UnaryOperator<String>> correction : CORRECTIONS.entrySet()) {
      String corrected = correction.getValue().apply(text);
      if (!corrected.equals(text) && !corrected.isEmpty() && isAccepted(corrected, row)) {
        return Optional.of(correction.getKey());
      }
    }
    int length = text.codePointCount(0, text.length());
    if (row.maxLength().isPresent() && length > row.maxLength().getAsInt()) {
      return Optional.of(tooFar(length - row.maxLength().getAsInt(), "long"));
    }
    if (row.minLength().isPresent() && length < row.minLength().getAsInt()) {
      return Optional.of(tooFar(row.minLength().getAsInt() - length, "short"));
    }
    return Optional.empty();
  }

  private static String tooFar(int characters, String way) {
    return String.format(
        Locale.ROOT,
        "It is %d %s too %s.",
        characters,
        characters == 1 ? "character" : "characters",
        way);
  }

  private static boolean isAccepted(String text, FieldRow row) {
    int length = text.codePointCount(0, text.length());
    return row.characters().allows(text)
        && row.maxLength().stream().allMatch(most -> length <= most)
        && row.minLength().stream().allMatch(least -> length >= least)
        && row.values().filter(rule -> !rule.matchesText(text)).isEmpty();
  }
}
