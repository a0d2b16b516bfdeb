package ridgeproof.transaction;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import ridgeproof.transaction.record.ByteRange;
import ridgeproof.transaction.record.LogicalRecord;

/** Holds a reading to the promise that every byte belongs to something, and to one thing only. */
public final class Accounting {

  private Accounting() {}

  public static void everyByteIsAccountedFor(Transaction transaction) {
    if (transaction.records().isEmpty()) {
      return;
    }
    List<ByteRange> whole = new ArrayList<>(transaction.unread());
    for (LogicalRecord record : transaction.records()) {
      whole.add(record.range());
      List<ByteRange> parts = new ArrayList<>(record.unread());
      record.fields().forEach(field -> parts.add(field.range()));
      tiles(parts, record.range(), "record " + record.ordinal());
    }
    tiles(whole, transaction.source().range(), "file");
  }

  private static void tiles(List<ByteRange> parts, ByteRange whole, String what) {
    parts.sort(Comparator.comparingInt(ByteRange::offset).thenComparingInt(ByteRange::length));
    int position = whole.offset();
    for (ByteRange part : parts) {
      assertEquals(position, part.offset(), what);
      position = part.end();
    }
    assertEquals(whole.end(), position, what);
  }
}
