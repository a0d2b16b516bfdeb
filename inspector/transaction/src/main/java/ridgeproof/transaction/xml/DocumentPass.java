package ridgeproof.transaction.xml;

import com.ctc.wstx.exc.WstxEOFException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import org.codehaus.stax2.LocationInfo;
import org.codehaus.stax2.XMLStreamReader2;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;
import ridgeproof.spec.xml.XmlElement;
import ridgeproof.spec.xml.XmlTables;
import ridgeproof.spec.xml.XmlTables.RecordElement;
import ridgeproof.transaction.record.ByteRange;

/** What is read of a document until it ends or breaks. */
final class DocumentPass {

  private static final String PACKAGE_NAME =
      XmlTables.PACKAGE.substring(XmlTables.PACKAGE.indexOf(':') + 1);

  private final XmlContext context;
  private final KnownStarts starts;
  private final RecordSink sink;
  private final Namespaces namespaces;
  private final Names names = new Names();
  private final List<Map<String, String>> scopes = new ArrayList<>();
  private ElidingReader characters;
  private XMLStreamReader2 parser;
  private LocationInfo places;
  private RecordBuilder record;
  private ByteRange outside;
  private boolean resumed;
  private int last;
  private int whole;
  private int unreadFrom;

  DocumentPass(XmlContext context, RecordSink sink, Namespaces namespaces) {
    this.context = context;
    this.starts = new KnownStarts(context.source, context.xml);
    this.sink = sink;
    this.namespaces = namespaces;
  }

  /**
   * Reads on from a place.
   *
   * @return where the XML broke, if it did
   */
  OptionalInt read(Parser factory, int from) {
    resumed = sink.lastStart() >= 0;
    characters = new ElidingReader(context.source, context.runs, from);
    last = from;
    try {
      parser = factory.parse(characters);
      places = parser.getLocationInfo();
      while (parser.hasNext() && sink.mayGoOn()) {
        next();
      }
      finishRecord(last);
      return OptionalInt.empty();
    } catch (XMLStreamException stop) {
      int at =
          endsWithin(stop)
              ? context.source.length()
              : Math.max(last, characters.brokenAt(stop).orElse(last));
      whole = lastTag(at);
      unreadFrom = record == null ? whole : at;
      finishRecord(at);
      if (!resumed || !isRest(at)) {
        report(stop, at);
      }
      return OptionalInt.of(at);
    }
  }

  /** Text behind the outermost element. */
  Optional<ByteRange> outside() {
    return Optional.ofNullable(outside);
  }

  /**
   * What is not read behind the place where the XML broke. The tag in which it did belongs to the
   * record up to there; outside of a record it is unread as a whole. End tags alone are nothing.
   */
  Optional<ByteRange> unreadTo(int end) {
    return unreadFrom < end && !EndTags.fill(context.source, whole, end)
        ? Optional.of(context.absolute(unreadFrom, end))
        : Optional.empty();
  }

  /** Whether the file just ends, and nothing that is known stands behind what was left open. */
  private boolean endsWithin(XMLStreamException stop) {
    return stop instanceof WstxEOFException && starts.next(last).isEmpty();
  }

  /** Whether what began earlier only ends here; nothing is looked at twice while records follow. */
  private boolean isRest(int at) {
    return starts.next(at).isEmpty() && EndTags.fill(context.source, last, context.source.length());
  }

  private void report(XMLStreamException stop, int at) {
    if (context.source.startsWith(lastTag(at), '<', '!', 'D', 'O', 'C')) {
      context.reportOnce(
          "RP-XML-002",
          "",
          Location.file().at(context.absolute(lastTag(at), at)),
          Observed.of("a document type declaration"),
          "no document type declaration");
      return;
    }
    context.log.add(
        "RP-XML-001",
        Location.file().at(context.absolute(at, Math.min(at + 1, context.source.length()))),
        Observed.of(Parser.inWords(stop, context.source, at)),
        "well-formed XML");
  }

  /** The markup that reading was in when it stopped. */
  private int lastTag(int at) {
    int tag = context.source.indexOf('<', last, at + 1);
    return tag < 0 ? at : tag;
  }

  private void next() throws XMLStreamException {
    switch (parser.next()) {
      case XMLStreamConstants.START_ELEMENT -> begin();
      case XMLStreamConstants.END_ELEMENT -> end();
      case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA -> text();
      case XMLStreamConstants.ENTITY_REFERENCE ->
          context.reportOnce(
              "RP-XML-002",
              "entity",
              Location.file().at(context.absolute(start(), start() + 1)),
              Observed.of("a reference to an entity"),
              "no entities but those of XML itself");
      default -> {}
    }
  }

  /** Text is looked at where none may be: behind the element that holds the records. */
  private void text() throws XMLStreamException {
    if (!scopes.isEmpty() || resumed || sink.lastStart() < 0 || parser.isWhiteSpace()) {
      return;
    }
    ByteRange range = context.absolute(start(), characters.end(places.getEndingCharOffset()));
    if (outside == null) {
      context.log.add(
          "RP-STR-013",
          Location.file().at(range),
          Observed.of("text behind the last element"),
          "the file ends with the last record");
    }
    outside = outside == null ? range : SubfieldBuilder.spanning(outside, range);
  }

  private int start() {
    return characters.start(places.getStartingCharOffset());
  }

  private void begin() throws XMLStreamException {
    int start = start();
    int textStart = characters.end(places.getEndingCharOffset());
    last = textStart;
    Names.Name name = names.of(parser.getLocalName());
    scopes.add(namespaces.current());
    attributes(context.absolute(start, textStart));
    if (!context.admitItem()) {
      return;
    }
    Optional<RecordElement> known = context.xml.record(name.local());
    if (record != null) {
      boolean endIsMissing = known.isPresent() && record.isWithinKnown();
      XmlElement element = record.begin(name, start, textStart);
      if (element != null) {
        checkNamespace(name, start, textStart);
      }
      if (!endIsMissing) {
        return;
      }
      finishRecord(start);
    }
    if (known.isPresent()) {
      record = sink.begin(known.get(), start, textStart);
      checkNamespace(name, start, textStart);
    } else if (name.local().equals(PACKAGE_NAME)) {
      sink.beginPackage(context.absolute(start, textStart));
      checkNamespace(name, start, textStart);
    }
  }

  private void attributes(ByteRange range) {
    for (int i = 0; i < parser.getAttributeCount(); i++) {
      String attribute = parser.getAttributeLocalName(i);
      if (!namespaces.declare(attribute, parser.getAttributeValue(i))) {
        switch (names.of(attribute).local()) {
          case "id" -> sink.identify(parser.getAttributeValue(i));
          case "ref" -> sink.refer(parser.getAttributeValue(i), range);
          default -> {}
        }
      }
    }
  }

  private void checkNamespace(Names.Name name, int start, int textStart) {
    String uri = namespaces.of(name.prefix());
    if (uri == null || context.xml.prefixes(uri).isEmpty()) {
      String shown = uri == null ? "no namespace" : uri;
      context.reportOnce(
          "RP-XML-003",
          name.prefix() + " " + shown,
          Location.file().at(context.absolute(start, textStart)),
          Observed.of(name.prefix().isEmpty() ? shown : name.prefix() + ": " + shown),
          "a namespace of the encoding");
    }
  }

  private void end() throws XMLStreamException {
    int textEnd = start();
    int end = characters.end(places.getEndingCharOffset());
    last = Math.max(last, end);
    if (!scopes.isEmpty()) {
      namespaces.restore(scopes.remove(scopes.size() - 1));
    }
    if (record == null) {
      return;
    }
    if (record.depth() > 1) {
      record.end(textEnd, end);
    } else {
      finishRecord(end);
    }
  }

  private void finishRecord(int end) {
    if (record != null) {
      sink.add(record.build(end));
      record = null;
    }
  }
}
