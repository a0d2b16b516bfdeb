package ridgeproof.imagery.wsq;

import java.util.Optional;
import ridgeproof.imagery.wsq.codestream.HuffmanTable;
import ridgeproof.imagery.wsq.codestream.WsqBlock;
import ridgeproof.imagery.wsq.codestream.WsqCodestream;
import ridgeproof.imagery.wsq.entropy.EntropyCodedSegment;
import ridgeproof.imagery.wsq.entropy.HuffmanLookup;
import ridgeproof.imagery.wsq.subband.EntropySymbols;

/**
 * Counts the coefficients that the entropy-coded data holds, without room for any of them: what it
 * does not hold need not be allocated.
 */
final class CodedExtent {

  private final byte[] bytes;
  private final int origin;
  private EntropyCodedSegment data;
  private int segment;
  private int next;
  private long buffer;
  private int bits;

  /**
   * @param bytes of the whole codestream
   * @param origin where they begin in the file
   */
  CodedExtent(byte[] bytes, int origin) {
    this.bytes = bytes;
    this.origin = origin;
  }

  /** The coefficients of all blocks. */
  long of(WsqCodestream codestream) {
    long sum = 0;
    for (WsqBlock block : codestream.blocks()) {
      Optional<HuffmanTable> table = block.table();
      if (table.isPresent()) {
        int start = block.dataOffset() - origin;
        data = new EntropyCodedSegment(bytes, start, start + block.dataLength());
        sum += count(new HuffmanLookup(table.get()));
      }
    }
    return sum;
  }

  private long count(HuffmanLookup codes) {
    long sum = 0;
    enter(0);
    while (true) {
      refill();
      int entry = codes.find((int) (buffer >>> (Long.SIZE - HuffmanTable.MAX_CODE)));
      int length = entry & HuffmanLookup.LENGTH_MASK;
      int symbol = entry >>> HuffmanLookup.SYMBOL_SHIFT;
      int extra = EntropySymbols.extraBits(symbol);
      if (length == 0 || length + extra > bits) {
        if (segment + 1 >= data.segments()) {
          return sum;
        }
        enter(segment + 1);
      } else {
        sum += coefficients(symbol, extra == 0 ? 0 : buffer << length >>> (Long.SIZE - extra));
        buffer = buffer << length << extra;
        bits -= length + extra;
      }
    }
  }

  private static long coefficients(int symbol, long plain) {
    if (EntropySymbols.isRun(symbol)) {
      return symbol;
    }
    return symbol == EntropySymbols.RUN_8 || symbol == EntropySymbols.RUN_16 ? plain : 1;
  }

  private void enter(int index) {
    segment = index;
    next = data.segmentStart(index);
    buffer = 0;
    bits = 0;
  }

  private void refill() {
    while (bits <= Long.SIZE - 8 && next < data.segmentEnd(segment)) {
      buffer |= (data.bytes()[next++] & 0xFFL) << (Long.SIZE - 8 - bits);
      bits += 8;
    }
  }
}
