package ridgeproof.transaction.reader;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import ridgeproof.finding.Finding;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;
import ridgeproof.finding.Quantity;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.Code;
import ridgeproof.spec.layout.RecordTypeRow.Encoding;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.record.ByteRange;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.record.CharacterEncoding;
import ridgeproof.transaction.record.LogicalRecord;
import ridgeproof.transaction.record.Notation;
import ridgeproof.transaction.xml.XmlLimits;
import ridgeproof.transaction.xml.XmlReading;
import ridgeproof.transaction.xml.XmlStart;
import ridgeproof.transaction.xml.XmlTransactionReader;

/**
 * Reads a transaction in the traditional encoding (ANSI/NIST-ITL 1-2011 Update 2015, Annex B, from
 * memory). It never throws for what a file holds: what departs from the layout becomes a finding,
 * and reading goes on by the best evidence there is.
 */
public final class TransactionReader {

  private static final int SEARCHED_FOR_HEADER = 64 * 1024;

  private final SpecTables tables;
  private final ParseLimits limits;

  public TransactionReader(SpecTables tables, ParseLimits limits) {
    this.tables = tables;
    this.limits = limits;
  }

  /** Reads the file in either encoding; without records if it is no transaction. */
  public Transaction read(ByteSource source) {
    if (source.length() <= limits.maxBytes() && beginsAsXml(source)) {
      XmlReading reading = new XmlTransactionReader(tables, xmlLimits()).read(source);
      if (!reading.records().isEmpty()) {
        return new Run(reading.source()).take(reading);
      }
    }
    return new Run(source).read();
  }

  /** Whether XML begins before a transaction in the traditional encoding does. */
  private boolean beginsAsXml(ByteSource source) {
    if (source.startsWith(0, '1', '.')) {
      return false;
    }
    OptionalInt xml = XmlStart.in(source, tables.xml());
    return xml.isPresent()
        && (XmlStart.isXml(source)
            || new Run(source).headerStart().orElse(Integer.MAX_VALUE) > xml.getAsInt());
  }

  private XmlLimits xmlLimits() {
    return new XmlLimits(limits.maxRecords(), limits.maxItems(), limits.maxFindings());
  }

  private int newestVersion() {
    return tables.codes("versions").codes().stream()
        .map(Code::code)
        .mapToInt(Integer::parseInt)
        .max()
        .orElseThrow();
  }

  /** One reading. */
  private final class Run {

    private final ByteSource source;
    private final ParseContext context;
    private final List<LogicalRecord> records = new ArrayList<>();
    private final List<ByteRange> unread = new ArrayList<>();
    private TransactionContent contents = TransactionContent.none();
    private int position;

    Run(ByteSource source) {
      this.source = source;
      this.context = new ParseContext(source, tables, limits, newestVersion());
    }

    Transaction read() {
      if (canBegin()) {
        readHeader();
        while (position < source.length() && !limitReached()) {
          readNext();
        }
        if (position < source.length() || context.itemLimitReached()) {
          reportLimit();
        }
        new ContentsCheck(context, contents, records).run();
      }
      return transaction(context.encoding(), unread, context.log.findings(), Notation.TRADITIONAL);
    }

    /**
     * What the records of an XML file say of each other, in addition to what reading them found.
     */
    Transaction take(XmlReading reading) {
      LogicalRecord header = reading.records().get(0);
      new Type1Declarations(context, header).readVersion();
      contents = header.field(3).map(TransactionContent::of).orElse(TransactionContent.none());
      reading.records().forEach(this::add);
      new ContentsCheck(context, contents, records).run();
      List<Finding> findings = new ArrayList<>(reading.findings());
      findings.addAll(context.log.findings());
      return transaction(reading.encoding(), reading.unread(), findings, Notation.XML);
    }

    private Transaction transaction(
        CharacterEncoding encoding,
        List<ByteRange> left,
        List<Finding> findings,
        Notation notation) {
      return new Transaction(
          source, context.version(), encoding, records, left, findings, notation);
    }

    /** Finds the Type-1 record. */
    private boolean canBegin() {
      if (source.isEmpty()) {
        context.log.add("RP-STR-001", Location.file(), Observed.of("0 bytes"), "a transaction");
        return false;
      }
      if (source.length() > limits.maxBytes()) {
        context.log.add(
            "RP-STR-025",
            Location.file(),
            Observed.of(Quantity.of(source.length(), "byte")),
            "at most " + Quantity.of(limits.maxBytes(), "byte"));
        return false;
      }
      OptionalInt begin = headerStart();
      if (begin.isEmpty()) {
        context.log.add(
            "RP-STR-002",
            Location.file(),
            Observed.of("looks like " + FileTypeSniffer.of(source, tables)),
            "a file that begins with 1.001:");
        return false;
      }
      position = begin.getAsInt();
      if (position > 0) {
        skip(0, position, "RP-STR-003", "a file that begins with 1.001:");
      }
      return true;
    }

    private OptionalInt headerStart() {
      int end = Math.min(source.length(), SEARCHED_FOR_HEADER);
      for (int i = 0; i < end; i++) {
        Optional<Tag> tag = source.byteAt(i) == '1' ? Tag.at(source, i, end) : Optional.empty();
        if (tag.filter(t -> t.opensRecord() && t.number().recordType() == 1).isPresent()
            && (i == 0 || beginsHeader(i, tag.get().valueStart()))) {
          return OptionalInt.of(i);
        }
      }
      return OptionalInt.empty();
    }

    /** Behind a digit the tag may be the end of another: 11.001. */
    private boolean beginsHeader(int tag, int value) {
      if (!source.isDigitAt(value)) {
        return false;
      }
      return !source.isDigitAt(tag - 1) || goesOn(value);
    }

    /** Whether the field with this value is followed by another of the Type-1 record. */
    private boolean goesOn(int value) {
      int end = value;
      while (source.isDigitAt(end)) {
        end++;
      }
      return Tag.at(source, end + 1, source.length())
          .filter(tag -> tag.number().recordType() == 1 && !tag.opensRecord())
          .isPresent();
    }

    private void readHeader() {
      LogicalRecord header = new TaggedRecordReader(context, position, 1, 1).read();
      new Type1Declarations(context, header).read();
      contents = header.field(3).map(TransactionContent::of).orElse(TransactionContent.none());
      context.starts.expect(contents, context.version());
      add(header);
    }

    private void readNext() {
      int ordinal = records.size() + 1;
      OptionalInt tagged = taggedType();
      if (tagged.isPresent()) {
        add(new TaggedRecordReader(context, position, ordinal, tagged.getAsInt()).read());
        return;
      }
      OptionalInt binary = binaryType();
      if (binary.isPresent()) {
        add(new BinaryRecordReader(context).read(position, ordinal, binary.getAsInt()));
        return;
      }
      skipUnknown();
    }

    private OptionalInt taggedType() {
      // The last pixel of an image may be a digit.
      boolean behindImage = records.get(records.size() - 1).encoding() == Encoding.BINARY;
      OptionalInt tagged =
          behindImage ? context.starts.tagAt(position) : context.starts.taggedAt(position);
      return tagged.isPresent() ? tagged : context.starts.afterMissingEnd(position);
    }

    /** The binary type announced for this place, or another announced one that fits better. */
    private OptionalInt binaryType() {
      OptionalInt announced = announcedBinary();
      OptionalInt fitting = context.starts.binaryAt(position);
      if (announced.isPresent()
          && (fitting.isEmpty() || context.starts.headerFits(position, announced.getAsInt()))
          && couldBe(announced.getAsInt())) {
        return announced;
      }
      return fitting;
    }

    private OptionalInt announcedBinary() {
      int index = records.size() - 1;
      if (index >= contents.entries().size()) {
        return OptionalInt.empty();
      }
      int type = contents.entries().get(index).type();
      return context.starts.isBinary(type) ? OptionalInt.of(type) : OptionalInt.empty();
    }

    /**
     * A damaged header still counts if its length or its values make sense, or if the file ends
     * within it.
     */
    private boolean couldBe(int type) {
      Optional<List<BinaryHeader.Value>> header =
          BinaryHeader.read(source, position, tables.layout(type), context.version());
      if (header.isEmpty()) {
        return source.byteAt(position) == 0;
      }
      long end = position + source.uint32At(position);
      boolean lengthFits = end > position && end <= source.length();
      return context.starts.valuesFit(header.get())
          || lengthFits && context.starts.isBoundary((int) end);
    }

    private void skipUnknown() {
      OptionalInt next = context.starts.next(position + 1);
      int end = next.orElse(source.length());
      boolean allRead = records.size() > contents.entries().size();
      if (next.isEmpty() && allRead) {
        skip(position, end, "RP-STR-013", "the file ends with the last record");
      } else {
        skip(position, end, "RP-STR-018", "a record begins here");
      }
      position = end;
    }

    private void skip(int from, int to, String rule, String required) {
      ByteRange range = context.absolute(from, to);
      unread.add(range);
      context.log.add(
          rule,
          Location.file().at(range),
          Observed.of(Quantity.of(range.length(), "byte")),
          required);
    }

    private boolean limitReached() {
      return records.size() >= limits.maxRecords() || context.itemLimitReached();
    }

    /** Reports what is left unread: the rest of the file, or the rest of its last record. */
    private void reportLimit() {
      ByteRange rest = context.absolute(position, source.length());
      Location place = Location.of(records.get(records.size() - 1));
      if (rest.length() > 0) {
        place = Location.file().at(rest);
        unread.add(rest);
      }
      boolean items = context.itemLimitReached();
      context.log.add(
          "RP-STR-026",
          place,
          Observed.of(items ? "more information items" : "more records"),
          items
              ? "at most " + limits.maxItems() + " items"
              : "at most " + limits.maxRecords() + " records");
    }

    private void add(LogicalRecord record) {
      records.add(record);
      position = record.range().end() - source.origin();
      if (tables.recordType(record.type()).isEmpty()) {
        context.log.add(
            "RP-STR-024",
            Location.of(record),
            Observed.of("Type-" + record.type()),
            "a record type of the standard");
      }
      if (record.type() != 1 && record.idc().isEmpty()) {
        context.log.add(
            "RP-STR-028", Location.of(record), Observed.of("no readable IDC"), "IDC 00 to 99");
      }
    }
  }
}
