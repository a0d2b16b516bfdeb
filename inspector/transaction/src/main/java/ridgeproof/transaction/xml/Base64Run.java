package ridgeproof.transaction.xml;

import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import ridgeproof.transaction.record.ByteRange;
import ridgeproof.transaction.record.ByteSource;

/**
 * A run of Base64 and blanks, and all that is asked of it later, from one look at each byte.
 *
 * @param start its first byte
 * @param end the first byte that is neither Base64 nor a blank, or the end of what was looked at
 * @param digits how many stand before the first fill character
 * @param fill how many fill characters there are
 * @param late the first digit behind a fill character, or -1
 */
record Base64Run(int start, int end, int digits, int fill, int late) {

  private static final int GROUP = 4;
  private static final int BITS = 6;

  /** Most texts are short. */
  private static final int MIN_PIECE = 64;

  private static final int PIECE = 8 * 1024;

  private static final int BLANK = 0;
  private static final int DIGIT = 1;
  private static final int FILL = 2;
  private static final int OTHER = 3;
  private static final byte[] KINDS = kinds();

  /** What departs from Base64 of whole bytes, and where. */
  record Odd(String what, ByteRange range) {}

  /** Looks at pieces, which is quicker by far than at single bytes of a mapped file. */
  static final class Scanner {

    private final ByteBuffer bytes;
    private final byte[] piece = new byte[PIECE];
    private int digits;
    private int fill;
    private int late;

    Scanner(ByteSource source) {
      this.bytes = source.asBuffer();
    }

    /**
     * The run at a place.
     *
     * @param limit where it ends at the latest
     */
    Base64Run run(int start, int limit) {
      digits = 0;
      fill = 0;
      late = -1;
      int at = start;
      int length = MIN_PIECE;
      while (at < limit) {
        int count = Math.min(length, limit - at);
        bytes.get(at, piece, 0, count);
        int passed = pass(at, count);
        at += passed;
        if (passed < count) {
          break;
        }
        length = PIECE;
      }
      return new Base64Run(start, at, digits, fill, late);
    }

    /** How many bytes of the piece belong to the run. */
    private int pass(int at, int count) {
      int i = 0;
      while (i < count) {
        int kind = KINDS[piece[i] & 0xFF];
        if (kind == OTHER) {
          return i;
        } else if (kind == FILL) {
          fill++;
        } else if (fill == 0) {
          i = passDigits(i, count);
          continue;
        } else if (kind == DIGIT && late < 0) {
          late = at + i;
        }
        i++;
      }
      return count;
    }

    /** The loop that nearly all bytes of a file go through. */
    private int passDigits(int from, int count) {
      int found = 0;
      int i = from;
      int kind;
      while (i < count && (kind = KINDS[piece[i] & 0xFF]) <= DIGIT) {
        found += kind;
        i++;
      }
      digits += found;
      return i;
    }
  }

  int length() {
    return end - start;
  }

  /**
   * The first departure in a text that begins where the run does.
   *
   * @param textEnd where the text ends, which is not before the run
   */
  Optional<Odd> firstOdd(ByteSource source, int textEnd) {
    if (late >= 0) {
      return Optional.of(new Odd("more after the end", at(source, late, 1)));
    }
    if (end < textEnd) {
      String what = String.format(Locale.ROOT, "a character of code 0x%02X", source.byteAt(end));
      return Optional.of(new Odd(what, at(source, end, 1)));
    }
    int over = (digits + fill) % GROUP;
    boolean whole = over == 0 && fill < 3 || fill == 0 && over != 1;
    return whole
        ? Optional.empty()
        : Optional.of(
            new Odd(
                digits + " digits and " + fill + " fill characters",
                at(source, start, textEnd - start)));
  }

  /** How many bytes a text stands for that begins where the run does; odd characters count none. */
  int decodedLength(ByteSource source, int textEnd) {
    long count = digits;
    if (fill == 0) {
      for (int i = end; i < textEnd && KINDS[source.byteAt(i)] != FILL; i++) {
        count += KINDS[source.byteAt(i)] == DIGIT ? 1 : 0;
      }
    }
    return (int) (count * BITS / Byte.SIZE);
  }

  private static ByteRange at(ByteSource source, int from, int length) {
    return new ByteRange(source.origin() + from, length);
  }

  private static byte[] kinds() {
    byte[] kinds = new byte[256];
    Arrays.fill(kinds, (byte) OTHER);
    String digits = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
    digits.chars().forEach(c -> kinds[c] = DIGIT);
    "\r\n\t ".chars().forEach(c -> kinds[c] = BLANK);
    kinds['='] = FILL;
    return kinds;
  }
}
