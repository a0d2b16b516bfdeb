package ridgeproof.imagery.wsq.entropy;

import java.util.Arrays;
import ridgeproof.imagery.wsq.codestream.HuffmanTable;
import ridgeproof.imagery.wsq.subband.EntropySymbols;

/**
 * A Huffman table made for decoding: the next {@value #WIDTH} bits lead to an entry, and longer
 * codes are found by comparing with the first code of each length.
 *
 * <p>An entry holds the length of the code in its low 5 bits (0: none this short), then 3 bits of
 * kind, and the symbol above.
 */
public final class HuffmanLookup {

  static final int WIDTH = 12;
  public static final int LENGTH_MASK = 31;
  static final int KIND_MASK = 7 << 5;
  static final int KIND_VALUE = 1 << 5;
  static final int KIND_RUN = 2 << 5;
  public static final int SYMBOL_SHIFT = 8;

  final int[] entries = new int[1 << WIDTH];
  private final int[] firstCode = new int[HuffmanTable.MAX_CODE + 2];
  private final int[] firstIndex = new int[HuffmanTable.MAX_CODE + 2];
  private final int[] symbols;
  private final HuffmanTable table;

  public HuffmanLookup(HuffmanTable table) {
    this.table = table;
    symbols = new int[table.symbols().size()];
    for (int i = 0; i < symbols.length; i++) {
      symbols[i] = table.symbols().get(i);
    }
    int code = 0;
    int index = 0;
    for (int length = 1; length <= HuffmanTable.MAX_CODE; length++) {
      firstCode[length] = code;
      firstIndex[length] = index;
      int count = table.codesOfLength().get(length - 1);
      for (int i = 0; i < count && length <= WIDTH; i++) {
        int from = (code + i) << (WIDTH - length);
        Arrays.fill(
            entries, from, from + (1 << (WIDTH - length)), entry(length, symbols[index + i]));
      }
      index += count;
      code = (code + count) << 1;
    }
    firstIndex[HuffmanTable.MAX_CODE + 1] = index;
  }

  boolean isFor(HuffmanTable other) {
    return table == other;
  }

  /** The entry for 16 bits, or 0 when they begin with no code. */
  public int find(int sixteenBits) {
    int entry = entries[sixteenBits >>> (HuffmanTable.MAX_CODE - WIDTH)];
    for (int length = WIDTH + 1; entry == 0 && length <= HuffmanTable.MAX_CODE; length++) {
      int offset = (sixteenBits >>> (HuffmanTable.MAX_CODE - length)) - firstCode[length];
      if (offset >= 0 && offset < firstIndex[length + 1] - firstIndex[length]) {
        entry = entry(length, symbols[firstIndex[length] + offset]);
      }
    }
    return entry;
  }

  private static int entry(int length, int symbol) {
    int kind = 0;
    if (EntropySymbols.isValue(symbol)) {
      kind = KIND_VALUE;
    } else if (EntropySymbols.isRun(symbol)) {
      kind = KIND_RUN;
    }
    return symbol << SYMBOL_SHIFT | kind | length;
  }
}
