package ridgeproof.transaction.reader;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ridgeproof.spec.layout.FieldRow;
import ridgeproof.spec.layout.RecordLayout;
import ridgeproof.transaction.record.ByteRange;
import ridgeproof.transaction.record.ByteSource;

/** The unsigned numbers at the head of a binary record, as a layout places them. */
final class BinaryHeader {

  /**
   * One number.
   *
   * @param position where its first byte stands in the source
   * @param repetition counted from 1
   */
  record Value(FieldRow row, int repetition, int position, long number) {

    int bytes() {
      return row.bytes().getAsInt();
    }

    ByteRange range(ByteSource source) {
      return new ByteRange(source.origin() + position, bytes());
    }
  }

  private BinaryHeader() {}

  /** Every number of the header, or empty where the source ends before it does. */
  static Optional<List<Value>> read(
      ByteSource source, int start, RecordLayout layout, int version) {
    List<Value> values = readAvailable(source, start, layout, version);
    int expected = 0;
    for (FieldRow row : layout.rows()) {
      expected += isNumber(row, version) ? row.maxOccurs().orElse(1) : 0;
    }
    return values.size() == expected ? Optional.of(values) : Optional.empty();
  }

  /** The numbers of the header that the source holds whole. */
  static List<Value> readAvailable(ByteSource source, int start, RecordLayout layout, int version) {
    List<Value> values = new ArrayList<>();
    int position = start;
    for (FieldRow row : layout.rows()) {
      if (!isNumber(row, version)) {
        continue;
      }
      int bytes = row.bytes().getAsInt();
      for (int i = 1; i <= row.maxOccurs().orElse(1); i++) {
        if (!source.has(position, bytes)) {
          return values;
        }
        values.add(new Value(row, i, position, unsigned(source, position, bytes)));
        position += bytes;
      }
    }
    return values;
  }

  /** Bytes of these values together. */
  static int size(List<Value> values) {
    return values.stream().mapToInt(Value::bytes).sum();
  }

  private static boolean isNumber(FieldRow row, int version) {
    return row.bytes().isPresent() && row.versions().contains(version);
  }

  private static long unsigned(ByteSource source, int position, int bytes) {
    long number = 0;
    for (int i = 0; i < bytes; i++) {
      number = number << 8 | source.byteAt(position + i);
    }
    return number;
  }
}
