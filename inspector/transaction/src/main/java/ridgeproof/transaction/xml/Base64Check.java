package ridgeproof.transaction.xml;

import java.nio.ByteBuffer;
import java.util.Locale;
import java.util.Optional;
import ridgeproof.transaction.record.ByteRange;
import ridgeproof.transaction.record.ByteSource;

/** Whether a text is Base64 of whole bytes. */
final class Base64Check {

  private static final int GROUP = 4;
  private static final int PIECE = 8 * 1024;
  private static final boolean[] DIGIT = new boolean[256];

  static {
    for (char c :
        "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/".toCharArray()) {
      DIGIT[c] = true;
    }
  }

  /** What departs, and where. */
  record Odd(String what, ByteRange range) {}

  private Base64Check() {}

  /** The first departure. */
  static Optional<Odd> firstOdd(ByteSource text) {
    ByteBuffer bytes = text.asBuffer();
    byte[] piece = new byte[PIECE];
    int count = 0;
    int filled = 0;
    for (int at = 0; at < bytes.limit(); at += PIECE) {
      int length = Math.min(PIECE, bytes.limit() - at);
      bytes.get(at, piece, 0, length);
      for (int i = 0; i < length; i++) {
        int from = i;
        while (filled == 0 && i < length && DIGIT[piece[i] & 0xFF]) {
          i++;
        }
        count += i - from;
        int value = i < length ? piece[i] & 0xFF : ' ';
        if (value == '=') {
          filled++;
        } else if (value != ' ' && value != '\n' && value != '\r' && value != '\t') {
          String what =
              DIGIT[value]
                  ? "more after the end"
                  : String.format(Locale.ROOT, "a character of code 0x%02X", value);
          return Optional.of(new Odd(what, new ByteRange(text.origin() + at + i, 1)));
        }
      }
    }
    int over = (count + filled) % GROUP;
    boolean whole = over == 0 && filled < 3 || filled == 0 && count % GROUP != 1;
    return whole
        ? Optional.empty()
        : Optional.of(new Odd(count + " digits and " + filled + " fill characters", text.range()));
  }
}
