package ridgeproof.transaction.xml;

import ridgeproof.transaction.record.ByteRange;
import ridgeproof.transaction.record.ByteSource;

/** Where in a Base64 text the bytes of an image stand. */
public final class Base64Places {

  private static final int BYTES = 3;
  private static final int DIGITS = 4;

  private Base64Places() {}

  /**
   * The place in the file.
   *
   * @param text the Base64 in the file
   * @param decoded a place that begins where the text does and counts the bytes it stands for
   */
  public static ByteRange inFile(ByteSource source, ByteRange text, ByteRange decoded) {
    long from = (long) (decoded.offset() - text.offset()) / BYTES * DIGITS;
    long to = ((long) (decoded.end() - text.offset()) + BYTES - 1) / BYTES * DIGITS;
    int start = text.end();
    int end = text.end();
    long digits = 0;
    for (int i = text.offset(); i < text.end(); i++) {
      if (source.byteAt(i - source.origin()) <= ' ') {
        continue;
      }
      if (digits == from) {
        start = i;
      }
      if (digits == to) {
        end = i;
        break;
      }
      digits++;
    }
    return ByteRange.between(Math.min(start, end), end);
  }
}
