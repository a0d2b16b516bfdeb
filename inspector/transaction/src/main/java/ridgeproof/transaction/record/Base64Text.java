package ridgeproof.transaction.record;

import java.lang.ref.SoftReference;
import java.nio.ByteBuffer;
import java.util.Arrays;

/**
 * Bytes that a file holds as Base64. They are decoded when they are looked at, only the first of
 * them where that is enough, and given up where memory is short, so that a file of many images
 * costs no more than one of them.
 */
final class Base64Text {

  private static final byte[] VALUES = values();
  private static final int BITS = 6;
  private static final int PIECE = 8 * 1024;

  /** Enough to tell the format of an image. */
  private static final int HEAD = 1024;

  private final ByteSource text;
  private final int length;
  private volatile SoftReference<ByteBuffer> kept = new SoftReference<>(null);

  /**
   * @param length how many bytes the text stands for
   */
  Base64Text(ByteSource text, int length) {
    this.text = text;
    this.length = length;
  }

  /** The bytes that the text stands for. */
  int length() {
    return length;
  }

  /** All bytes. */
  ByteBuffer decoded() {
    return decoded(length);
  }

  /** The bytes before a place, and maybe more. */
  ByteBuffer decoded(int end) {
    ByteBuffer bytes = kept.get();
    return bytes == null || bytes.limit() < Math.min(end, length) ? decodedOnce(end) : bytes;
  }

  private synchronized ByteBuffer decodedOnce(int end) {
    ByteBuffer bytes = kept.get();
    if (bytes == null || bytes.limit() < Math.min(end, length)) {
      int count = end > HEAD ? length : Math.min(HEAD, length);
      bytes = ByteBuffer.wrap(decode(count)).asReadOnlyBuffer();
      kept = new SoftReference<>(bytes);
    }
    return bytes;
  }

  /**
   * Whether two texts stand for the same bytes. Texts with the same digits at the same places need
   * no decoding, nor do those that differ in a digit at the same place.
   */
  boolean standsForTheSame(Base64Text other) {
    if (length != other.length) {
      return false;
    }
    ByteBuffer one = text.asBuffer();
    ByteBuffer two = other.text.asBuffer();
    int at = one.mismatch(two);
    if (at < 0) {
      return true;
    }
    boolean counts = (at + 1L) * BITS <= (long) length * Byte.SIZE;
    boolean differ = counts && isDigit(one, at) && isDigit(two, at);
    return !differ && decoded().equals(other.decoded());
  }

  private static boolean isDigit(ByteBuffer text, int at) {
    return at < text.limit() && VALUES[text.get(at) & 0xFF] >= 0;
  }

  private byte[] decode(int wanted) {
    byte[] out = new byte[wanted];
    ByteBuffer bytes = text.asBuffer();
    byte[] piece = new byte[PIECE];
    int pending = 0;
    int bits = 0;
    int done = 0;
    for (int at = 0; at < bytes.limit() && done < wanted; at += PIECE) {
      int count = Math.min(PIECE, bytes.limit() - at);
      bytes.get(at, piece, 0, count);
      for (int i = 0; i < count && done < wanted; i++) {
        int value = VALUES[piece[i] & 0xFF];
        if (value >= 0) {
          pending = pending << BITS | value;
          bits += BITS;
          if (bits >= Byte.SIZE) {
            bits -= Byte.SIZE;
            out[done++] = (byte) (pending >>> bits);
          }
        }
      }
    }
    return out;
  }

  private static byte[] values() {
    byte[] values = new byte[256];
    Arrays.fill(values, (byte) -1);
    String digits = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
    for (int i = 0; i < digits.length(); i++) {
      values[digits.charAt(i)] = (byte) i;
    }
    return values;
  }
}
