package ridgeproof.transaction;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import ridgeproof.finding.Finding;
import ridgeproof.transaction.record.ByteRange;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.record.CharacterEncoding;
import ridgeproof.transaction.record.LogicalRecord;
import ridgeproof.transaction.record.WholeNumber;

/**
 * A transaction as it was read.
 *
 * @param version the number of field 1.002, 200 to 502, or the newest known where the file gives
 *     none
 * @param records in the order of the file; none when the file is no transaction
 * @param unread bytes that belong to no record
 * @param findings what reading met
 */
public record Transaction(
    ByteSource source,
    int version,
    CharacterEncoding encoding,
    List<LogicalRecord> records,
    List<ByteRange> unread,
    List<Finding> findings) {

  public Transaction {
    records = List.copyOf(records);
    unread = List.copyOf(unread);
    findings = List.copyOf(findings);
  }

  /** The Type-1 record, which every transaction begins with. */
  public Optional<LogicalRecord> header() {
    return records.isEmpty() ? Optional.empty() : Optional.of(records.get(0));
  }

  public List<LogicalRecord> recordsOfType(int type) {
    return records.stream().filter(record -> record.type() == type).toList();
  }

  /** Field 1.002 as it is written. */
  public Optional<String> statedVersion() {
    return header().flatMap(header -> header.text(2)).filter(text -> !text.isEmpty());
  }

  /** Whether the file was read by another version than it states, or states none. */
  public boolean isVersionAssumed() {
    return statedVersion().map(WholeNumber::parse).orElse(OptionalInt.empty()).orElse(-1)
        != version;
  }

  /** The type of transaction, field 1.004. */
  public Optional<String> typeOfTransaction() {
    return header().flatMap(header -> header.text(4));
  }
}
