package ridgeproof.imagery.wsq.entropy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import ridgeproof.imagery.wsq.codestream.HuffmanTable;

/**
 * A Huffman code for given frequencies, of at most 16 bits and without the code of only ones, as in
 * annex K of ITU-T T.81 (from memory).
 */
public final class HuffmanCode {

  private static final int SYMBOLS = 256;

  private final HuffmanTable table;
  private final int[] codes = new int[SYMBOLS];
  private final int[] lengths = new int[SYMBOLS];

  private HuffmanCode(HuffmanTable table) {
    this.table = table;
    int code = 0;
    int index = 0;
    for (int length = 1; length <= HuffmanTable.MAX_CODE; length++) {
      for (int i = 0; i < table.codesOfLength().get(length - 1); i++) {
        int symbol = table.symbols().get(index++);
        codes[symbol] = code++;
        lengths[symbol] = length;
      }
      code <<= 1;
    }
  }

  /** A code for the symbols whose frequency is above 0. */
  public static HuffmanCode of(int id, int[] frequencies) {
    long[] weights = new long[SYMBOLS + 1];
    int used = 0;
    for (int symbol = 0; symbol < SYMBOLS; symbol++) {
      weights[symbol] = frequencies[symbol];
      used += frequencies[symbol] > 0 ? 1 : 0;
    }
    if (used == 0) {
      weights[1] = 1;
    }
    weights[SYMBOLS] = 1;
    int[] depths = depths(weights);
    List<Integer> symbols = new ArrayList<>();
    int[] counts = new int[SYMBOLS + 1];
    for (int depth = 1; depth <= SYMBOLS; depth++) {
      for (int symbol = 0; symbol < SYMBOLS; symbol++) {
        if (depths[symbol] == depth) {
          symbols.add(symbol);
        }
      }
    }
    for (int depth : depths) {
      counts[depth] += depth > 0 ? 1 : 0;
    }
    shorten(counts);
    List<Integer> codesOfLength = new ArrayList<>();
    for (int length = 1; length <= HuffmanTable.MAX_CODE; length++) {
      codesOfLength.add(counts[length]);
    }
    return new HuffmanCode(new HuffmanTable(id, codesOfLength, symbols));
  }

  public HuffmanTable table() {
    return table;
  }

  public int code(int symbol) {
    return codes[symbol];
  }

  public int length(int symbol) {
    return lengths[symbol];
  }

  private static int[] depths(long[] weights) {
    int[] depths = new int[weights.length];
    int[] next = new int[weights.length];
    Arrays.fill(next, -1);
    while (true) {
      int least = -1;
      int second = -1;
      for (int i = 0; i < weights.length; i++) {
        if (weights[i] > 0) {
          if (least < 0 || weights[i] <= weights[least]) {
            second = least;
            least = i;
          } else if (second < 0 || weights[i] <= weights[second]) {
            second = i;
          }
        }
      }
      if (second < 0) {
        return depths;
      }
      weights[second] += weights[least];
      weights[least] = 0;
      int end = second;
      depths[end]++;
      while (next[end] >= 0) {
        end = next[end];
        depths[end]++;
      }
      next[end] = least;
      for (int i = least; i >= 0; i = next[i]) {
        depths[i]++;
      }
    }
  }

  private static void shorten(int[] counts) {
    for (int length = counts.length - 1; length > HuffmanTable.MAX_CODE; length--) {
      while (counts[length] > 0) {
        int shorter = length - 2;
        while (counts[shorter] == 0) {
          shorter--;
        }
        counts[length] -= 2;
        counts[length - 1]++;
        counts[shorter + 1] += 2;
        counts[shorter]--;
      }
    }
    int longest = HuffmanTable.MAX_CODE;
    while (counts[longest] == 0) {
      longest--;
    }
    counts[longest]--;
  }
}
