package ridgeproof.imagery.wsq.codestream;

import java.util.Arrays;
import java.util.List;

/** Collects the bytes of a codestream: segments, and bits with a zero byte stuffed after FF. */
public final class CodestreamWriter {

  private static final int BITS = 64;

  private byte[] bytes = new byte[8192];
  private int size;
  private long buffer;
  private int bufferedBits;

  public void marker(WsqMarker marker) {
    uint16(marker.code());
  }

  public void uint8(int value) {
    if (size == bytes.length) {
      bytes = Arrays.copyOf(bytes, 2 * size);
    }
    bytes[size++] = (byte) value;
  }

  public void uint16(int value) {
    uint8(value >>> 8);
    uint8(value);
  }

  public void shortNumber(WsqDecimal number) {
    uint8(number.exponent());
    uint16((int) number.mantissa());
  }

  public void signedNumbers(List<WsqDecimal> numbers) {
    for (WsqDecimal number : numbers) {
      uint8(number.negative() ? 1 : 0);
      uint8(number.exponent());
      uint16((int) (number.mantissa() >>> 16));
      uint16((int) number.mantissa());
    }
  }

  public void bytes(byte[] values) {
    for (byte value : values) {
      uint8(value);
    }
  }

  /** Appends the low bits of a value, at most 16. */
  public void bits(int value, int count) {
    buffer |= (long) value << (BITS - bufferedBits - count);
    bufferedBits += count;
    while (bufferedBits >= BITS / 2) {
      flushByte();
    }
  }

  /** Fills up the last byte with ones. */
  public void endBits() {
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

  public byte[] toArray() {
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
