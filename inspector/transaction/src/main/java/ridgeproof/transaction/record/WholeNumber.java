package ridgeproof.transaction.record;

import java.util.OptionalInt;

/** Whole numbers as fields write them: decimal digits and nothing else. */
public final class WholeNumber {

  private static final int MAX_DIGITS = 9;

  private WholeNumber() {}

  /** The number, or empty for anything but 1 to 9 digits. */
  public static OptionalInt parse(String text) {
    if (text.isEmpty()
        || text.length() > MAX_DIGITS
        || !text.chars().allMatch(c -> c >= '0' && c <= '9')) {
      return OptionalInt.empty();
    }
    return OptionalInt.of(Integer.parseInt(text));
  }
}
