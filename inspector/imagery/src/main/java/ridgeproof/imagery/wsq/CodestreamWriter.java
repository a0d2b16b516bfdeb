package ridgeproof.imagery.wsq;

import java.util.Arrays;
import java.util.List;

/** Collects the bytes of a codestream: segments, and bits with a zero byte stuffed after FF. */
final class CodestreamWriter {

  private static final int BITS = 64;

  private byte[] bytes = new byte[8192];
  private int size;
  private long buffer;
  private int bufferedBits;

  void marker(WsqMarker marker) {
    uint16(marker.code());
  }

  void uint8(int value) {
    if (size == bytes.length) {
      bytes = Arrays.copyOf(bytes, 2 * size);
    }
    bytes[size++] = (byte) value;
  }

  void uint16(int value) {
    uint8(value >>> 8);
    uint8(value);
  }

  void shortNumber(ScaledNumber number) {
    uint8(number.exponent());
    uint16((int) number.mantissa());
  }

  void signedNumbers(List<ScaledNumber> numbers) {
    for (ScaledNumber number : numbers) {
      uint8(number.negative() ? 1 : 0);
      uint8(number.exponent());
      uint16((int) (number.mantissa() >>> 16));
      uint16((int) number.mantissa());
    }
  }

  void bytes(byte[] values) {
    for (byte value : values) {
      uint8(value);
    }
  }

  /** Appends the low bits of a value, at most 16. */
  void bits(int value, int count) {
    buffer |= (long) value << (BITS - bufferedBits - count);
    bufferedBits += count;
    while (bufferedBits >= BITS / 2) {
      flushByte();
    }
  }

  /** Fills up the last byte with ones. */
  void endBits() {
    while (bufferedBits >= Byte.SIZE) {
      flushByte();
    }
    if (bufferedBits > 0) {
      buffer |= -1L >>> bufferedBits;
      bufferedBits = Byte.SIZE;
      flushByte();
    }
    buffer = 0;
    bufferedBits = 0;
  }

  byte[] toArray() {
    return Arrays.copyOf(bytes, size);
  }

  private void flushByte() {
    int value = (int) (buffer >>> (BITS - Byte.SIZE));
    uint8(value);
    if (value == 0xFF) {
      uint8(0);
    }
    buffer <<= Byte.SIZE;
    bufferedBits -= Byte.SIZE;
  }
}
