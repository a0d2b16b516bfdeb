package ridgeproof.imagery.wsq.entropy;

import ridgeproof.imagery.wsq.codestream.DecodingDeadline;
import ridgeproof.imagery.wsq.codestream.HuffmanTable;
import ridgeproof.imagery.wsq.subband.CoefficientPlane;
import ridgeproof.imagery.wsq.subband.EntropySymbols;

/**
 * Decodes the entropy-coded data of blocks into a plane of coefficients. Bits stand left-aligned in
 * a 64-bit buffer. Far from the end of the data a fast loop handles the usual symbols; everything
 * else goes one symbol at a time through {@link #step}.
 */
final class EntropyDecoder {

  /** How the decoding of a block ended. */
  enum End {
    /** All wanted coefficients were there. */
    COMPLETE,
    /** The data ended first. */
    SHORT,
    /** The next bits were no code. */
    BAD_CODE,
    /** Deadline or cancellation. */
    STOPPED
  }

  private static final int REFILL_BYTES = 4;
  private static final int REFILL_BITS = 32;

  private final CoefficientPlane plane;
  private final DecodingDeadline stop;
  private final float[] lookup = new float[CoefficientPlane.LOOKUP];
  private int lookupSubband = -1;

  private HuffmanLookup codes;
  private EntropyCodedSegment data;
  private byte[] bytes;
  private int segment;
  private int segmentEnd;
  private int next;
  private long buffer;
  private int bits;
  private int position;
  private int subband;

  EntropyDecoder(CoefficientPlane plane, DecodingDeadline stop) {
    this.plane = plane;
    this.stop = stop;
  }

  /** Decodes coefficients from one position of the plane to another. */
  End decode(EntropyCodedSegment block, HuffmanLookup table, int from, int to) {
    data = block;
    codes = table;
    bytes = block.bytes();
    startSegment(0);
    position = from;
    subband = 0;
    while (position < to) {
      while (plane.end(subband) <= position) {
        subband++;
      }
      if (stop.isRaised()) {
        return End.STOPPED;
      }
      if (subband != lookupSubband) {
        plane.fillLookup(subband, lookup);
        lookupSubband = subband;
      }
      int end = Math.min(plane.end(subband), to);
      while (position < end) {
        fast(end);
        if (position < end) {
          End failure = step();
          if (failure != null) {
            return failure;
          }
        }
      }
    }
    return End.COMPLETE;
  }

  /** The position behind the last decoded coefficient; runs may lead past what was wanted. */
  int position() {
    return position;
  }

  /** The position in the block's plain data of the byte that holds the next bit. */
  int bytePosition() {
    return Math.min(next - (bits + 7) / 8, data.segmentEnd(data.segments() - 1));
  }

  /** Bits after the last decoded code, in all remaining segments. */
  long remainingBits() {
    return 8L * (data.segmentEnd(data.segments() - 1) - next) + bits;
  }

  private void fast(int end) {
    byte[] source = bytes;
    int[] entries = codes.entries;
    float[] values = plane.values;
    float[] coefficients = lookup;
    int at = next;
    int last = segmentEnd - 2 * REFILL_BYTES;
    long held = buffer;
    int count = bits;
    int out = position;
    while (out < end) {
      if (count < REFILL_BITS) {
        if (at > last) {
          break;
        }
        held |= uint32(source, at) << (REFILL_BITS - count);
        at += REFILL_BYTES;
        count += REFILL_BITS;
      }
      int entry = entries[(int) (held >>> (Long.SIZE - HuffmanLookup.WIDTH))];
      int kind = entry & HuffmanLookup.KIND_MASK;
      int length = entry & HuffmanLookup.LENGTH_MASK;
      if (kind == HuffmanLookup.KIND_VALUE) {
        values[out++] = coefficients[entry >>> HuffmanLookup.SYMBOL_SHIFT];
      } else if (kind == HuffmanLookup.KIND_RUN) {
        out += entry >>> HuffmanLookup.SYMBOL_SHIFT;
      } else {
        break;
      }
      held <<= length;
      count -= length;
    }
    next = at;
    buffer = held;
    bits = count;
    position = out;
  }

  private static long uint32(byte[] source, int at) {
    return (source[at] & 0xFFL) << 24
        | (source[at + 1] & 0xFF) << 16
        | (source[at + 2] & 0xFF) << 8
        | source[at + 3] & 0xFF;
  }

  private End step() {
    refill();
    int entry = codes.find((int) (buffer >>> (Long.SIZE - HuffmanTable.MAX_CODE)));
    int length = entry & HuffmanLookup.LENGTH_MASK;
    int symbol = entry >>> HuffmanLookup.SYMBOL_SHIFT;
    int extra = EntropySymbols.extraBits(symbol);
    if (length == 0 || length + extra > bits) {
      if (segment + 1 < data.segments() && bits < 8) {
        startSegment(segment + 1);
        return null;
      }
      return bits < HuffmanTable.MAX_CODE || length > 0 ? End.SHORT : End.BAD_CODE;
    }
    long plain = extra == 0 ? 0 : buffer << length >>> (Long.SIZE - extra);
    if (!apply(symbol, (int) plain)) {
      return End.BAD_CODE;
    }
    buffer = buffer << length << extra;
    bits -= length + extra;
    return null;
  }

  private boolean apply(int symbol, int plain) {
    if (EntropySymbols.isValue(symbol)) {
      plane.values[position++] = lookup[symbol];
    } else if (EntropySymbols.isRun(symbol)) {
      position += symbol;
    } else {
      switch (symbol) {
        case EntropySymbols.RUN_8, EntropySymbols.RUN_16 -> position += plain;
        case EntropySymbols.POSITIVE_8, EntropySymbols.POSITIVE_16 ->
            plane.values[position++] = plane.coefficient(subband, plain);
        case EntropySymbols.NEGATIVE_8, EntropySymbols.NEGATIVE_16 ->
            plane.values[position++] = plane.coefficient(subband, -plain);
        default -> {
          return false;
        }
      }
    }
    return true;
  }

  private void startSegment(int index) {
    segment = index;
    segmentEnd = data.segmentEnd(index);
    next = data.segmentStart(index);
    buffer = 0;
    bits = 0;
  }

  private void refill() {
    while (bits <= Long.SIZE - 8 && next < segmentEnd) {
      buffer |= (bytes[next++] & 0xFFL) << (Long.SIZE - 8 - bits);
      bits += 8;
    }
  }
}
