package ridgeproof.transaction.xml;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;
import ridgeproof.finding.Quantity;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.RecordTypeRow.Encoding;
import ridgeproof.transaction.record.ByteRange;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.record.CharacterEncoding;
import ridgeproof.transaction.record.LogicalRecord;
import ridgeproof.transaction.record.Notation;

/**
 * Reads the records of a transaction in XML. It never throws for what a file holds; where the XML
 * breaks, reading goes on with the next element that is known.
 */
public final class XmlTransactionReader {

  private final SpecTables tables;
  private final XmlLimits limits;

  public XmlTransactionReader(SpecTables tables, XmlLimits limits) {
    this.tables = tables;
    this.limits = limits;
  }

  /** Reads bytes in which {@link XmlStart} finds XML. */
  public XmlReading read(ByteSource file) {
    ByteSource source = WideText.isWide(file) ? WideText.narrowed(file) : file;
    int begin = XmlStart.in(source, tables.xml()).orElse(0);
    Declaration declaration = Declaration.of(source, begin);
    CharacterEncoding encoding = declaration.encoding().orElse(CharacterEncoding.UTF_8);
    Charset charset =
        encoding == CharacterEncoding.LATIN_1
            ? StandardCharsets.ISO_8859_1
            : StandardCharsets.UTF_8;
    XmlContext context = new XmlContext(source, tables, limits, new XmlText(charset));
    if (declaration.encoding().isEmpty()) {
      context.log.add(
          "RP-XML-014",
          Location.file().at(context.absolute(0, declaration.end())),
          Observed.of(declaration.stated().orElse("")),
          "UTF-8");
    }
    checkEncoding(context, file, declaration, begin);
    return new Run(context, encoding).read(begin, declaration.end());
  }

  /** A file that was saved in another encoding still declares the one that it had. */
  private static void checkEncoding(
      XmlContext context, ByteSource file, Declaration declaration, int begin) {
    String stated = declaration.stated().orElse("").toLowerCase(Locale.ROOT);
    if (context.source != file
        && declaration.encoding().isPresent()
        && !stated.isEmpty()
        && !stated.startsWith("utf-16")) {
      context.log.add(
          "RP-XML-018",
          Location.file().at(context.absolute(begin, declaration.end())),
          Observed.of("UTF-16, declared as " + declaration.stated().orElse("")),
          "the character set that the file declares");
    }
  }

  /** One reading. */
  private static final class Run {

    private final XmlContext context;
    private final CharacterEncoding encoding;
    private final RecordSink sink;
    private final List<ByteRange> unread = new ArrayList<>();
    private final Namespaces namespaces = new Namespaces();

    Run(XmlContext context, CharacterEncoding encoding) {
      this.context = context;
      this.encoding = encoding;
      this.sink = new RecordSink(context);
    }

    /**
     * @param begin where XML begins
     * @param content where it begins behind its declaration
     */
    XmlReading read(int begin, int content) {
      KnownStarts starts = new KnownStarts(context.source, context.xml);
      Parser parser = new Parser();
      int from = content;
      while (from >= 0 && from < context.source.length()) {
        DocumentPass passage = new DocumentPass(context, sink, namespaces);
        OptionalInt stop = passage.read(parser, from);
        passage.outside().ifPresent(unread::add);
        if (stop.isEmpty() || !sink.mayGoOn()) {
          break;
        }
        int broken = stop.getAsInt();
        OptionalInt next = starts.next(Math.max(broken, Math.max(from, sink.lastStart()) + 1));
        passage.unreadTo(next.orElse(context.source.length())).ifPresent(unread::add);
        from = next.orElse(-1);
      }
      List<LogicalRecord> records = sink.records();
      if (records.isEmpty() && !sink.sawPackage()) {
        return new XmlReading(context.source, encoding, List.of(), List.of(), List.of());
      }
      reportTop(begin);
      sink.checkReferences();
      return new XmlReading(
          context.source, encoding, headerFirst(records), unread, context.log.findings());
    }

    /** A byte order mark may stand before XML. */
    private void reportTop(int begin) {
      if (begin > 0 && !(begin == 3 && context.source.byteAt(0) == 0xEF)) {
        unread.add(context.absolute(0, begin));
        context.log.add(
            "RP-STR-003",
            Location.file().at(context.absolute(0, begin)),
            Observed.of(Quantity.of(begin, "byte")),
            "a file that begins with its XML");
      }
    }

    /** The rules look for the Type-1 record at the beginning. */
    private List<LogicalRecord> headerFirst(List<LogicalRecord> records) {
      if (!records.isEmpty() && records.get(0).type() == 1) {
        return records;
      }
      List<LogicalRecord> ordered = new ArrayList<>();
      records.stream().filter(record -> record.type() == 1).findFirst().ifPresent(ordered::add);
      if (ordered.isEmpty()) {
        context.log.add(
            "RP-XML-012",
            Location.file(),
            Observed.of("no " + context.xml.element(1).qualified()),
            "one " + context.xml.element(1).qualified() + " before the other records");
        ordered.add(
            new LogicalRecord(
                1,
                1,
                Encoding.TAGGED,
                OptionalInt.empty(),
                context.absolute(0, 0),
                List.of(),
                List.of(),
                context.source.slice(0, 0),
                Notation.XML));
      } else {
        context.log.add(
            "RP-XML-009",
            Location.of(ordered.get(0)),
            Observed.of(context.xml.element(1).qualified()),
            "before all other records");
      }
      records.stream().filter(record -> record != ordered.get(0)).forEach(ordered::add);
      List<LogicalRecord> numbered = new ArrayList<>();
      ordered.forEach(record -> numbered.add(record.withOrdinal(numbered.size() + 1)));
      return numbered;
    }
  }
}
