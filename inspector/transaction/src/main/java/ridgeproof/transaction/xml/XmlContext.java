package ridgeproof.transaction.xml;

import java.util.HashSet;
import java.util.OptionalInt;
import java.util.Set;
import ridgeproof.finding.FindingLog;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.xml.XmlTables;
import ridgeproof.transaction.record.ByteRange;
import ridgeproof.transaction.record.ByteSource;

/** What the parts of the reader share while one file is read. */
final class XmlContext {

  final ByteSource source;
  final SpecTables tables;
  final XmlTables xml;
  final XmlLimits limits;
  final FindingLog log;
  final XmlText text;
  final Base64Runs runs;
  private final Set<String> reportedOnce = new HashSet<>();
  private String typeOfTransaction = "";
  private int items;

  XmlContext(ByteSource source, SpecTables tables, XmlLimits limits, XmlText text) {
    this.source = source;
    this.tables = tables;
    this.xml = tables.xml();
    this.limits = limits;
    this.log = new FindingLog(tables, limits.maxFindings());
    this.text = text;
    this.runs = new Base64Runs(source);
  }

  /** Field 1.004, once it has been read. */
  String typeOfTransaction() {
    return typeOfTransaction;
  }

  void declareType(String type) {
    typeOfTransaction = type;
  }

  /** Counts one more item or element; false once the limit is reached. */
  boolean admitItem() {
    return ++items <= limits.maxItems();
  }

  boolean itemLimitReached() {
    return items > limits.maxItems();
  }

  ByteRange absolute(int from, int to) {
    return ByteRange.between(source.origin() + from, source.origin() + Math.max(from, to));
  }

  /** Reports what is said once however often it occurs. */
  void reportOnce(String rule, String what, Location place, Observed observed, String required) {
    if (reportedOnce.add(rule + what)) {
      log.add(rule, place, observed, required);
    }
  }

  /** Whether the value of the field is what reports may show. */
  boolean isPublic(FieldNumber number, int item) {
    return tables.layout(number.recordType()).rows().stream()
        .filter(row -> row.number().equals(number))
        .filter(row -> row.item().isEmpty() || row.item().equals(OptionalInt.of(item)))
        .anyMatch(row -> row.isPublic());
  }
}
