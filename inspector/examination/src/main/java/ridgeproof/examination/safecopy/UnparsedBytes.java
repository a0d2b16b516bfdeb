package ridgeproof.examination.safecopy;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import ridgeproof.transaction.record.ByteRange;
import ridgeproof.transaction.record.ByteSource;

/**
 * Bytes that nothing is known of. Text keeps blanks, line ends, separators and the kind of each
 * other character; what may be a part of an image keeps nothing.
 */
final class UnparsedBytes {

  private static final int FIRST_SEPARATOR = 0x1C;
  private static final int MAX_ODD = 2;
  private static final int ONE_IN = 4;

  private UnparsedBytes() {}

  /** Puts what may be kept of ranges that belong together in its place. */
  static void copy(ByteSource source, List<ByteRange> ranges, byte[] out) {
    boolean text =
        ranges.stream()
            .map(range -> source.slice(range.offset() - source.origin(), range.length()))
            .allMatch(UnparsedBytes::isPlain);
    if (text) {
      for (ByteRange range : ranges) {
        for (int i = range.offset(); i < range.end(); i++) {
          out[i] = (byte) classOf(source.byteAt(i - source.origin()));
        }
      }
    }
  }

  private static int classOf(int value) {
    if (value >= '0' && value <= '9') {
      return '0';
    }
    if (value >= 'A' && value <= 'Z') {
      return 'X';
    }
    return value >= 'a' && value <= 'z' ? 'x' : value;
  }

  private static boolean isPlain(ByteSource bytes) {
    for (int i = 0; i < bytes.length(); i++) {
      if (bytes.byteAt(i) > 0x7E || isOddControl(bytes.byteAt(i))) {
        return false;
      }
    }
    return true;
  }

  /**
   * Whether the value of a field is text, perhaps with a few characters that text does not have.
   */
  static boolean isText(ByteSource value) {
    int controls = 0;
    int high = 0;
    for (int i = 0; i < value.length(); i++) {
      controls += isOddControl(value.byteAt(i)) ? 1 : 0;
      high += value.byteAt(i) >= 0x80 ? 1 : 0;
    }
    return controls <= MAX_ODD
        && (high <= MAX_ODD || high * ONE_IN <= value.length() || isUtf8(value));
  }

  /** The first byte that is no text, which is where a finding stands. */
  static void copyFirstOdd(ByteSource value, byte[] out) {
    for (int i = 0; i < value.length(); i++) {
      if (isOddControl(value.byteAt(i)) || value.byteAt(i) >= 0x80) {
        out[value.origin() + i] = (byte) value.byteAt(i);
        return;
      }
    }
  }

  private static boolean isOddControl(int value) {
    boolean blank = value == '\t' || value == '\n' || value == '\r';
    return value < FIRST_SEPARATOR && !blank || value == 0x7F;
  }

  private static boolean isUtf8(ByteSource value) {
    try {
      StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(value.toArray()));
      return true;
    } catch (CharacterCodingException e) {
      return false;
    }
  }
}
