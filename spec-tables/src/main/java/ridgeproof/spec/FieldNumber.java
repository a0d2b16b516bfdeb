package ridgeproof.spec;

import java.util.Comparator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The number of a field, {@code 14.013}.
 *
 * @param recordType 1 to 99
 * @param field 1 or more
 */
public record FieldNumber(int recordType, int field) implements Comparable<FieldNumber> {

  private static final Pattern TEXT = Pattern.compile("(\\d{1,2})\\.(\\d{1,9})");
  private static final Comparator<FieldNumber> ORDER =
      Comparator.comparingInt(FieldNumber::recordType).thenComparingInt(FieldNumber::field);

  /**
   * @throws IllegalArgumentException if the text is not a field number
   */
  public static FieldNumber parse(String text) {
    Matcher matcher = TEXT.matcher(text);
    if (!matcher.matches()) {
      throw new IllegalArgumentException("not a field number");
    }
    return new FieldNumber(Integer.parseInt(matcher.group(1)), Integer.parseInt(matcher.group(2)));
  }

  @Override
  public int compareTo(FieldNumber other) {
    return ORDER.compare(this, other);
  }

  /** The standard's way to write it: at least three digits after the point. */
  @Override
  public String toString() {
    String digits = Integer.toString(field);
    return recordType + "." + "0".repeat(Math.max(0, 3 - digits.length())) + digits;
  }
}
