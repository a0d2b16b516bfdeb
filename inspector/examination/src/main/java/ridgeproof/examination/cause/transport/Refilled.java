package ridgeproof.examination.cause.transport;

import java.util.List;
import java.util.Optional;
import ridgeproof.spec.layout.RecordTypeRow.Encoding;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.record.LogicalRecord;

/**
 * A file whose binary records each lack a few bytes, with as many put back. A binary record that
 * ends early takes the beginning of the next one with it, so that only the first is seen to be
 * wrong; once it is filled, the next can be read.
 *
 * @param reading the whole file; its images stay damaged
 * @param records how many were filled
 * @param bytes that were put in
 */
record Refilled(Reading reading, int records, int bytes) {

  /** A record that lacks more was not robbed of single bytes. */
  private static final int MAX_OF_A_RECORD = 6;

  /** A card has about as many images; each try reads the whole file. */
  private static final int MAX_RECORDS = 20;

  /** Nothing where filling does not lead to a whole file. */
  static Optional<Refilled> of(Suspect suspect) {
    Reading reading = suspect.reading();
    int bytes = 0;
    for (int records = 0; records <= MAX_RECORDS; records++) {
      if (reading.isWhole()) {
        return records == 0 ? Optional.empty() : Optional.of(new Refilled(reading, records, bytes));
      }
      Optional<Filling> filling = filling(suspect, reading);
      if (filling.isEmpty()) {
        return Optional.empty();
      }
      bytes += filling.get().bytes();
      reading = filling.get().reading();
    }
    return Optional.empty();
  }

  private record Filling(Reading reading, int bytes) {}

  /** Fills the first record that goes on beyond its length, with as few bytes as help. */
  private static Optional<Filling> filling(Suspect suspect, Reading reading) {
    Optional<LogicalRecord> first =
        reading.transaction().records().stream().filter(Refilled::isMislaid).findFirst();
    if (first.isEmpty()) {
      return Optional.empty();
    }
    ByteSource source = reading.transaction().source();
    long stated = first.get().bytes().uint32At(0);
    long end = first.get().range().offset() - source.origin() + stated;
    int known = readable(reading, first.get());
    for (int bytes = 1; bytes <= MAX_OF_A_RECORD; bytes++) {
      long at = end - bytes;
      if (at > first.get().range().offset() - source.origin() && at <= source.length()) {
        Reading filled = suspect.read(inserted(source, (int) at, bytes));
        if (readable(filled, first.get()) > known) {
          return Optional.of(new Filling(filled, bytes));
        }
      }
    }
    return Optional.empty();
  }

  private static boolean isMislaid(LogicalRecord record) {
    return record.encoding() == Encoding.BINARY
        && record.bytes().has(0, Integer.BYTES)
        && record.bytes().uint32At(0) != record.range().length();
  }

  /** Records up to the first whose length is wrong. */
  private static int readable(Reading reading, LogicalRecord mislaid) {
    List<LogicalRecord> records = reading.transaction().records();
    int sound = 0;
    while (sound < records.size() && !isMislaid(records.get(sound))) {
      sound++;
    }
    return Math.max(sound, mislaid.ordinal() - 1);
  }

  private static ByteSource inserted(ByteSource source, int at, int bytes) {
    byte[] filled = new byte[source.length() + bytes];
    source.asBuffer().get(0, filled, 0, at);
    source.asBuffer().get(at, filled, at + bytes, source.length() - at);
    return ByteSource.of(filled);
  }
}
