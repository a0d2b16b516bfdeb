package ridgeproof.spec.layout;

/**
 * The number of a field, {@code 14.013}.
 *
 * @param recordType 1 to 99
 * @param field 1 or more
 */
public record FieldNumber(int recordType, int field) implements Comparable<FieldNumber> {

  private static final int MAX_TYPE_DIGITS = 2;
  private static final int MAX_FIELD_DIGITS = 9;

  /**
   * @throws IllegalArgumentException if the text is not a field number
   */
  public static FieldNumber parse(String text) {
    int point = text.indexOf('.');
    if (!areDigits(text, 0, point, MAX_TYPE_DIGITS)
        || !areDigits(text, point + 1, text.length(), MAX_FIELD_DIGITS)) {
      throw new IllegalArgumentException("not a field number");
    }
    return new FieldNumber(
        Integer.parseInt(text, 0, point, 10), Integer.parseInt(text, point + 1, text.length(), 10));
  }

  private static boolean areDigits(String text, int from, int to, int most) {
    if (to <= from || to - from > most) {
      return false;
    }
    for (int i = from; i < to; i++) {
      if (text.charAt(i) < '0' || text.charAt(i) > '9') {
        return false;
      }
    }
    return true;
  }

  // Written out, since what a record makes by itself is linked at run time, in every start anew.
  @Override
  public boolean equals(Object other) {
    return other instanceof FieldNumber number
        && recordType == number.recordType
        && field == number.field;
  }

  @Override
  public int hashCode() {
    return 31 * field + recordType;
  }

  @Override
  public int compareTo(FieldNumber other) {
    return recordType != other.recordType
        ? Integer.compare(recordType, other.recordType)
        : Integer.compare(field, other.field);
  }

  /** The standard's way to write it: at least three digits after the point. */
  @Override
  public String toString() {
    String digits = Integer.toString(field);
    return recordType + "." + "0".repeat(Math.max(0, 3 - digits.length())) + digits;
  }
}
