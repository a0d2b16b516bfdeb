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
    for (int i = 0; i < bytes.limit(); i++) {
      if (i % PIECE == 0) {
        bytes.get(i, piece, 0, Math.min(PIECE, bytes.limit() - i));
      }
      int value = piece[i % PIECE] & 0xFF;
      if (DIGIT[value] && filled == 0) {
        count++;
      } else if (value == '=') {
        filled++;
      } else if (value != ' ' && value != '\n' && value != '\r' && value != '\t') {
        String what =
            DIGIT[value]
                ? "more after the end"
                : String.format(Locale.ROOT, "a character of code 0x%02X", value);
        return Optional.of(new Odd(what, new ByteRange(text.origin() + i, 1)));
      }
    }
    int over = (count + filled) % GROUP;
    boolean whole = over == 0 && filled < 3 || filled == 0 && count % GROUP != 1;
    return whole
        ? Optional.empty()
        : Optional.of(new Odd(count + " digits and " + filled + " fill characters", text.range()));
  }
}
