package ridgeproof.transaction.reader;

import ridgeproof.finding.FindingLog;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;
import ridgeproof.finding.Quantity;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.transaction.record.ByteRange;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.record.CharacterEncoding;

/** What the parts of the reader share while one file is read. */
final class ParseContext {

  final ByteSource source;
  final SpecTables tables;
  final ParseLimits limits;
  final FindingLog log;
  final RecordBoundaryFinder starts;
  private CharacterEncoding encoding = CharacterEncoding.ASCII;
  private int version;
  private int items;

  ParseContext(ByteSource source, SpecTables tables, ParseLimits limits, int newestVersion) {
    this.source = source;
    this.tables = tables;
    this.limits = limits;
    this.log = new FindingLog(tables, limits.maxFindings());
    this.starts = new RecordBoundaryFinder(source, tables);
    this.version = newestVersion;
  }

  CharacterEncoding encoding() {
    return encoding;
  }

  int version() {
    return version;
  }

  void declare(CharacterEncoding declaredEncoding, int declaredVersion) {
    encoding = declaredEncoding;
    version = declaredVersion;
  }

  /** Counts one more item; false once the limit is reached. */
  boolean admitItem() {
    return ++items <= limits.maxItems();
  }

  boolean itemLimitReached() {
    return items > limits.maxItems();
  }

  /** Whether the field of that type holds image or other binary data. */
  boolean isDataField(FieldNumber number, int recordType) {
    return number.recordType() == recordType
        && tables
            .recordType(recordType)
            .map(row -> row.imageField().map(number::equals).orElse(false))
            .orElse(number.field() == 999);
  }

  ByteRange absolute(int from, int to) {
    return ByteRange.between(source.origin() + from, source.origin() + to);
  }

  /** Reports a length that disagrees with the bytes. */
  void lengthDisagrees(Location place, long stated, int actual) {
    log.add("RP-STR-004", place, Observed.of("LEN " + stated), "LEN " + actual);
  }

  /** Reports that the file ends within a record of a stated length. */
  void cutOff(Location place, long stated, int available) {
    cutOff(place, Quantity.of(stated, "byte"), available);
  }

  /** Reports that the file ends within a record, before a length that could be read. */
  void cutOff(Location place, int available) {
    cutOff(place, "a complete record", available);
  }

  private void cutOff(Location place, String required, int available) {
    log.add(
        "RP-STR-012",
        place,
        Observed.of(Quantity.of(available, "byte") + ", then the end of the file"),
        required);
  }
}
