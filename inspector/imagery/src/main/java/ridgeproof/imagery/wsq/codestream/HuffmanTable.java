package ridgeproof.imagery.wsq.codestream;

import java.util.List;
import java.util.Optional;
import ridgeproof.finding.Quantity;

/**
 * One table of DHT: canonical Huffman codes of at most 16 bits, as in ITU-T T.81 (WSQ specification
 * IAFIS-IC-0110, from memory).
 *
 * @param id 0 to 7
 * @param codesOfLength how many codes have 1, 2, ... 16 bits
 * @param symbols in the order of their codes, 0 to 255
 */
public record HuffmanTable(int id, List<Integer> codesOfLength, List<Integer> symbols) {

  public static final int MAX_CODE = 16;
  public static final int IDS = 8;

  public HuffmanTable {
    codesOfLength = List.copyOf(codesOfLength);
    symbols = List.copyOf(symbols);
  }

  /** Why these counts and symbols are no Huffman table, or nothing when they are one. */
  Optional<String> impossibility() {
    if (id >= IDS) {
      return Optional.of("Huffman table id " + id + " is above " + (IDS - 1));
    }
    int nextCode = 0;
    for (int length = 1; length <= MAX_CODE; length++) {
      nextCode = 2 * nextCode + codesOfLength.get(length - 1);
      if (nextCode > 1 << length) {
        return Optional.of(
            "Huffman table " + id + " has too many codes of " + Quantity.of(length, "bit"));
      }
    }
    return symbols.isEmpty()
        ? Optional.of("Huffman table " + id + " has no codes")
        : Optional.empty();
  }
}
