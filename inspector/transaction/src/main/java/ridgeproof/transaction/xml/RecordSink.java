package ridgeproof.transaction.xml;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.xml.XmlTables;
import ridgeproof.spec.xml.XmlTables.RecordElement;
import ridgeproof.transaction.record.ByteRange;
import ridgeproof.transaction.record.LogicalRecord;
import ridgeproof.transaction.record.WholeNumber;

/** The records that have been read, and what concerns more than one of them. */
final class RecordSink {

  private final XmlContext context;
  private final List<LogicalRecord> records = new ArrayList<>();
  private final Set<String> ids = new HashSet<>();
  private final Map<String, ByteRange> references = new LinkedHashMap<>();
  private int packages;
  private int lastStart = -1;
  private boolean limitReported;

  RecordSink(XmlContext context) {
    this.context = context;
  }

  List<LogicalRecord> records() {
    return records;
  }

  boolean sawPackage() {
    return packages > 0;
  }

  /** Where the last record or package began, or -1. */
  int lastStart() {
    return lastStart;
  }

  void beginPackage(ByteRange range) {
    packages++;
    lastStart = range.offset() - context.source.origin();
    if (packages == 2) {
      context.log.add(
          "RP-XML-015",
          Location.file().at(range),
          Observed.of("a second " + XmlTables.PACKAGE),
          "one transaction in a file");
    }
  }

  /** A record begins. */
  RecordBuilder begin(RecordElement element, int start, int textStart) {
    lastStart = start;
    Location place =
        Location.inRecord(records.size() + 1, element.type())
            .at(context.absolute(start, textStart));
    if (packages == 0) {
      context.reportOnce(
          "RP-XML-004", "", place, Observed.of(element.qualified()), "within " + XmlTables.PACKAGE);
    }
    if (element.type() == 1 && records.stream().anyMatch(record -> record.type() == 1)) {
      context.log.add(
          "RP-XML-013", place, Observed.of("a second " + element.qualified()), "one in a file");
    }
    return new RecordBuilder(context, records.size() + 1, element, start, textStart);
  }

  void add(LogicalRecord record) {
    records.add(record);
    record
        .field(new FieldNumber(record.type(), 1))
        .filter(field -> WholeNumber.parse(field.text()).orElse(record.type()) != record.type())
        .ifPresent(
            field ->
                context.log.add(
                    "RP-XML-017",
                    Location.of(record).at(field.value()),
                    Observed.of("record category " + field.text()),
                    "record category " + record.type()));
  }

  void identify(String id) {
    ids.add(id);
  }

  void refer(String id, ByteRange range) {
    references.putIfAbsent(id, range);
  }

  /** Reports references to elements that are not there. */
  void checkReferences() {
    references.forEach(
        (id, range) -> {
          if (!ids.contains(id)) {
            context.log.add(
                "RP-XML-011",
                Location.file().at(range),
                Observed.of("no element with this id"),
                "an element with the id that is referred to");
          }
        });
  }

  /** Whether more may be read; reports the limit once. */
  boolean mayGoOn() {
    boolean full = records.size() >= context.limits.maxRecords();
    if (!full && !context.itemLimitReached()) {
      return true;
    }
    if (!limitReported) {
      limitReported = true;
      context.log.add(
          "RP-STR-026",
          Location.file(),
          Observed.of(full ? "more records" : "more information items"),
          full
              ? "at most " + context.limits.maxRecords() + " records"
              : "at most " + context.limits.maxItems() + " items");
    }
    return false;
  }
}
