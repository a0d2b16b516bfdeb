package ridgeproof.imagery.wsq.codestream;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ridgeproof.transaction.record.ByteSource;

/**
 * The layouts of the marker segments (WSQ specification IAFIS-IC-0110, from memory). Lengths count
 * the two length bytes but not the marker. The reading methods expect that many bytes to be there.
 */
public final class MarkerSegmentSyntax {

  public static final int FRAME_LENGTH = 17;
  public static final int BLOCK_LENGTH = 3;
  static final int RESTART_LENGTH = 4;
  public static final int SUBBANDS = 64;

  /** WSQ has filters of 9 and 7 or of 8 and 8 taps; hundreds would cost hours. */
  private static final int MAX_TAPS = 32;

  private static final int LENGTH_BYTES = 2;
  private static final int SHORT_NUMBER_BYTES = 3;
  private static final int SIGNED_NUMBER_BYTES = 6;
  public static final int QUANTIZATION_LENGTH =
      LENGTH_BYTES + SHORT_NUMBER_BYTES + 2 * SHORT_NUMBER_BYTES * SUBBANDS;
  private static final int COUNTS = HuffmanTable.MAX_CODE;

  private MarkerSegmentSyntax() {}

  static WsqFrame frame(ByteSource source, int body, int offset) {
    return new WsqFrame(
        offset,
        source.byteAt(body),
        source.byteAt(body + 1),
        source.uint16At(body + 2),
        source.uint16At(body + 4),
        shortNumber(source, body + 6),
        shortNumber(source, body + 9),
        source.byteAt(body + 12),
        source.uint16At(body + 13));
  }

  static QuantizationTable quantization(ByteSource source, int body, int offset) {
    List<WsqDecimal> widths = new ArrayList<>(SUBBANDS);
    List<WsqDecimal> zeroWidths = new ArrayList<>(SUBBANDS);
    for (int subband = 0; subband < SUBBANDS; subband++) {
      int at = body + SHORT_NUMBER_BYTES * (1 + 2 * subband);
      widths.add(shortNumber(source, at));
      zeroWidths.add(shortNumber(source, at + SHORT_NUMBER_BYTES));
    }
    return new QuantizationTable(offset, shortNumber(source, body), widths, zeroWidths);
  }

  static int transformLength(ByteSource source, int body) {
    if (!source.has(body, 2)) {
      return LENGTH_BYTES + 2;
    }
    int low = TransformTable.halfLength(source.byteAt(body));
    int high = TransformTable.halfLength(source.byteAt(body + 1));
    return LENGTH_BYTES + 2 + SIGNED_NUMBER_BYTES * (low + high);
  }

  static Optional<TransformTable> transform(ByteSource source, int body, int offset) {
    int lowLength = source.byteAt(body);
    int highLength = source.byteAt(body + 1);
    boolean pair = lowLength > 0 && highLength > 0 && lowLength % 2 == highLength % 2;
    if (!pair || Math.max(lowLength, highLength) > MAX_TAPS) {
      return Optional.empty();
    }
    int low = TransformTable.halfLength(lowLength);
    int high = TransformTable.halfLength(highLength);
    int at = body + 2;
    return Optional.of(
        new TransformTable(
            offset,
            lowLength,
            highLength,
            signedNumbers(source, at, low),
            signedNumbers(source, at + low * SIGNED_NUMBER_BYTES, high)));
  }

  /** The length of as many whole tables as the stated length and the bytes allow. */
  static int huffmanLength(ByteSource source, int body, int stated) {
    int end = Math.min(source.length(), body - LENGTH_BYTES + stated);
    int at = body;
    while (at < end || at == body) {
      int next = afterTable(source, at);
      if (next < 0 || next > end && at > body) {
        break;
      }
      at = next;
    }
    return at == body ? LENGTH_BYTES + 1 + COUNTS : at - body + LENGTH_BYTES;
  }

  static List<HuffmanTable> huffman(ByteSource source, int body, int end) {
    List<HuffmanTable> tables = new ArrayList<>();
    int at = body;
    for (int next = afterTable(source, at); next >= 0 && next <= end; ) {
      List<Integer> counts = new ArrayList<>(COUNTS);
      for (int i = 1; i <= COUNTS; i++) {
        counts.add(source.byteAt(at + i));
      }
      List<Integer> symbols = new ArrayList<>();
      for (int i = at + 1 + COUNTS; i < next; i++) {
        symbols.add(source.byteAt(i));
      }
      tables.add(new HuffmanTable(source.byteAt(at), counts, symbols));
      at = next;
      next = at < end ? afterTable(source, at) : -1;
    }
    return tables;
  }

  private static int afterTable(ByteSource source, int at) {
    if (!source.has(at, 1 + COUNTS)) {
      return -1;
    }
    int symbols = 0;
    for (int i = 1; i <= COUNTS; i++) {
      symbols += source.byteAt(at + i);
    }
    return at + 1 + COUNTS + symbols;
  }

  private static WsqDecimal shortNumber(ByteSource source, int at) {
    return new WsqDecimal(false, source.byteAt(at), source.uint16At(at + 1));
  }

  private static List<WsqDecimal> signedNumbers(ByteSource source, int at, int count) {
    List<WsqDecimal> numbers = new ArrayList<>(count);
    for (int i = 0; i < count; i++) {
      int number = at + i * SIGNED_NUMBER_BYTES;
      numbers.add(
          new WsqDecimal(
              source.byteAt(number) != 0, source.byteAt(number + 1), source.uint32At(number + 2)));
    }
    return numbers;
  }
}
