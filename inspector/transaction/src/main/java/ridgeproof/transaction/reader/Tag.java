package ridgeproof.transaction.reader;

import java.util.Optional;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.transaction.record.ByteSource;

/**
 * The number that leads a tagged field, {@code 14.013:}.
 *
 * @param text as written, without the colon
 * @param valueStart the first byte after the colon
 */
record Tag(FieldNumber number, String text, int valueStart) {

  private static final int MAX_TYPE_DIGITS = 2;
  private static final int MAX_FIELD_DIGITS = 9;

  /** The tag at a position, if there is one before {@code end}. */
  static Optional<Tag> at(ByteSource source, int position, int end) {
    int point = digits(source, position, end, MAX_TYPE_DIGITS);
    if (point == position || !is(source, point, end, '.')) {
      return Optional.empty();
    }
    int colon = digits(source, point + 1, end, MAX_FIELD_DIGITS);
    if (colon < point + 2 || !is(source, colon, end, ':')) {
      return Optional.empty();
    }
    String text = source.latin1(position, colon - position);
    return Optional.of(new Tag(FieldNumber.parse(text), text, colon + 1));
  }

  boolean opensRecord() {
    return number.field() == 1;
  }

  private static int digits(ByteSource source, int from, int end, int most) {
    int i = from;
    while (i < end && i < from + most && source.isDigitAt(i)) {
      i++;
    }
    return i;
  }

  private static boolean is(ByteSource source, int position, int end, char wanted) {
    return position < end && source.byteAt(position) == wanted;
  }
}
