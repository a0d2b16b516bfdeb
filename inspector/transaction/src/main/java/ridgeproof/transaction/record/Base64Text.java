package ridgeproof.transaction.record;

import java.lang.ref.SoftReference;
import java.nio.ByteBuffer;
import java.util.Arrays;

/**
 * Bytes that a file holds as Base64. They are decoded when they are looked at, and given up where
 * memory is short, so that a file of many images costs no more than one of them.
 */
final class Base64Text {

  private static final byte[] VALUES = values();
  private static final int BITS = 6;
  private static final int PIECE = 8 * 1024;

  private final ByteSource text;
  private final int length;
  private volatile SoftReference<ByteBuffer> kept = new SoftReference<>(null);

  Base64Text(ByteSource text) {
    this.text = text;
    this.length = (int) ((long) digits(text) * BITS / Byte.SIZE);
  }

  /** The bytes that the text stands for. */
  int length() {
    return length;
  }

  ByteBuffer decoded() {
    ByteBuffer bytes = kept.get();
    return bytes == null ? decodedOnce() : bytes;
  }

  private synchronized ByteBuffer decodedOnce() {
    ByteBuffer bytes = kept.get();
    if (bytes == null) {
      bytes = ByteBuffer.wrap(decode()).asReadOnlyBuffer();
      kept = new SoftReference<>(bytes);
    }
    return bytes;
  }

  /** Whether a byte is a digit of Base64. */
  static boolean isDigit(int value) {
    return VALUES[value & 0xFF] >= 0;
  }

  private static int digits(ByteSource text) {
    int count = 0;
    byte[] piece = new byte[PIECE];
    ByteBuffer bytes = text.asBuffer();
    for (int at = 0; at < bytes.limit(); at += PIECE) {
      int length = Math.min(PIECE, bytes.limit() - at);
      bytes.get(at, piece, 0, length);
      for (int i = 0; i < length; i++) {
        if (VALUES[piece[i] & 0xFF] >= 0) {
          count++;
        } else if (piece[i] == '=') {
          return count;
        }
      }
    }
    return count;
  }

  private byte[] decode() {
    byte[] out = new byte[length];
    ByteBuffer bytes = text.asBuffer();
    byte[] piece = new byte[PIECE];
    int pending = 0;
    int bits = 0;
    int done = 0;
    for (int at = 0; at < bytes.limit() && done < length; at += PIECE) {
      int count = Math.min(PIECE, bytes.limit() - at);
      bytes.get(at, piece, 0, count);
      for (int i = 0; i < count && done < length; i++) {
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
