package ridgeproof.examination.cause.transport;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToLongFunction;
import ridgeproof.spec.layout.RecordTypeRow.Encoding;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.record.LogicalRecord;
import ridgeproof.transaction.record.WholeNumber;

/** By how many bytes records are shorter than they state. */
final class Shortage {

  /** Ends a tagged record. */
  private static final int FS = 0x1C;

  private final Transaction transaction;
  private final Map<LogicalRecord, Integer> missing = new LinkedHashMap<>();
  private final boolean explicable;

  private Shortage(Transaction transaction, ToLongFunction<LogicalRecord> most) {
    this.transaction = transaction;
    boolean all = true;
    for (LogicalRecord record : transaction.records()) {
      long bytes = stated(record) - record.range().length();
      if (bytes != 0) {
        all &= bytes > 0 && record.data().isPresent() && bytes <= most.applyAsLong(record);
        missing.put(record, (int) Math.max(0, bytes));
      }
    }
    explicable = all;
  }

  /**
   * @param most how many bytes a record may have lost at most by what happened
   */
  static Shortage of(Transaction transaction, ToLongFunction<LogicalRecord> most) {
    return new Shortage(transaction, most);
  }

  private static long stated(LogicalRecord record) {
    if (record.encoding() == Encoding.BINARY) {
      return record.bytes().has(0, 4) ? record.bytes().uint32At(0) : record.range().length();
    }
    return record
        .field(1)
        .map(field -> WholeNumber.parse(field.text()))
        .filter(number -> number.isPresent())
        .map(number -> (long) number.getAsInt())
        .orElse((long) record.range().length());
  }

  /** Whether every record that is shorter than stated has images and can have lost as much. */
  boolean isExplicable() {
    return explicable;
  }

  int bytes() {
    return missing.values().stream().mapToInt(Integer::intValue).sum();
  }

  int records() {
    return missing.size();
  }

  /** Whether each record with an image lacks the same, as where a station miscounts. */
  boolean isUniform() {
    long images =
        transaction.records().stream().filter(record -> record.data().isPresent()).count();
    return missing.size() == images && missing.values().stream().distinct().count() <= 1;
  }

  /**
   * The file with as many bytes put at the end of the images, so that its structure can be read;
   * the images stay damaged.
   */
  Optional<ByteSource> filled() {
    if (!explicable) {
      return Optional.empty();
    }
    ByteSource source = transaction.source();
    byte[] filled = new byte[source.length() + bytes()];
    int from = 0;
    int to = 0;
    for (Map.Entry<LogicalRecord, Integer> entry : missing.entrySet()) {
      int end = entry.getKey().range().end() - source.origin();
      boolean closed = entry.getKey().encoding() == Encoding.TAGGED && source.byteAt(end - 1) == FS;
      int at = closed ? end - 1 : end;
      copy(source, from, filled, to, at - from);
      to += at - from;
      Arrays.fill(filled, to, to + entry.getValue(), (byte) ' ');
      to += entry.getValue();
      from = at;
    }
    copy(source, from, filled, to, source.length() - from);
    return Optional.of(ByteSource.of(filled));
  }

  private static void copy(ByteSource source, int from, byte[] into, int to, int count) {
    source.asBuffer().get(from, into, to, count);
  }
}
