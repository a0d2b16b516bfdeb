package ridgeproof.transaction.xml;

import java.nio.ByteBuffer;
import ridgeproof.transaction.record.ByteRange;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.record.Field;

/** Where in a Base64 text the bytes of an image stand. */
public final class Base64Places {

  private static final int BYTES = 3;
  private static final int DIGITS = 4;
  private static final int PIECE = 8 * 1024;

  private final ByteBuffer bytes;
  private final int limit;
  private final byte[] piece = new byte[PIECE];
  private int at;
  private long passed;

  private Base64Places(ByteSource source, ByteRange text) {
    this.bytes = source.asBuffer();
    this.at = text.offset() - source.origin();
    this.limit = text.end() - source.origin();
  }

  /**
   * The place in the file.
   *
   * @param field data that the file holds as Base64
   * @param decoded a place that begins where the text does and counts the bytes it stands for
   */
  public static ByteRange inFile(ByteSource source, Field field, ByteRange decoded) {
    ByteRange text = field.value();
    int first = decoded.offset() - text.offset();
    int last = decoded.end() - text.offset();
    Base64Places places = new Base64Places(source, text);
    int start = source.origin() + places.of((long) first / BYTES * DIGITS);
    // The whole image is the most frequent place, and needs no look at its text.
    int end =
        last >= field.decodedLength().orElse(text.length())
            ? text.end()
            : source.origin() + places.of(((long) last + BYTES - 1) / BYTES * DIGITS);
    return ByteRange.between(Math.min(start, end), end);
  }

  /** Where a digit stands; not before one that was asked for earlier. */
  private int of(long digit) {
    while (at < limit) {
      int count = Math.min(PIECE, limit - at);
      bytes.get(at, piece, 0, count);
      for (int i = 0; i < count; i++) {
        if ((piece[i] & 0xFF) > ' ' && passed++ == digit) {
          passed--;
          at += i;
          return at;
        }
      }
      at += count;
    }
    return limit;
  }
}
