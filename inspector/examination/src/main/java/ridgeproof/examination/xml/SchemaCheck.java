package ridgeproof.examination.xml;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.Optional;
import javax.xml.XMLConstants;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParserFactory;
import javax.xml.transform.sax.SAXSource;
import javax.xml.validation.Schema;
import javax.xml.validation.Validator;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import org.xml.sax.XMLReader;
import ridgeproof.finding.FindingLog;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.record.ByteRange;
import ridgeproof.transaction.record.LogicalRecord;

/** Checks a transaction in XML against a schema that the user has. Safe to share. */
public final class SchemaCheck {

  private static final String RULE = "RP-XML-008";
  private static final int MAX_FINDINGS = 200;

  private final Schema schema;

  public SchemaCheck(Schema schema) {
    this.schema = schema;
  }

  /** Reports what the schema does not allow; nothing of XML that is not well-formed. */
  public void check(Transaction transaction, FindingLog log) {
    Messages messages = new Messages(transaction, log);
    try {
      SAXParserFactory factory = SAXParserFactory.newInstance();
      factory.setNamespaceAware(true);
      factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
      factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
      XMLReader reader = factory.newSAXParser().getXMLReader();
      Validator validator = schema.newValidator();
      validator.setErrorHandler(messages);
      validator.validate(
          new SAXSource(reader, new InputSource(new WithoutImages(transaction.source()))));
    } catch (SAXException e) {
      // Not well-formed, which reading has reported, or more than enough has been found.
    } catch (IOException | ParserConfigurationException e) {
      throw new IllegalStateException("bytes in memory and the JDK's own parser", e);
    }
  }

  /** Makes findings of messages. */
  private static final class Messages implements ErrorHandler {

    private final Transaction transaction;
    private final FindingLog log;
    private int found;
    private int line = 1;
    private int lineStart;

    Messages(Transaction transaction, FindingLog log) {
      this.transaction = transaction;
      this.log = log;
    }

    @Override
    public void warning(SAXParseException message) {
      // Schemas that could not be found were told of when they were loaded.
    }

    @Override
    public void error(SAXParseException message) throws SAXException {
      Optional<SchemaMessage> said = SchemaMessage.of(String.valueOf(message.getMessage()));
      if (said.isPresent()) {
        log.add(RULE, place(message), Observed.of(said.get().found()), said.get().required());
        if (++found >= MAX_FINDINGS) {
          throw message;
        }
      }
    }

    @Override
    public void fatalError(SAXParseException message) throws SAXException {
      throw message;
    }

    private Location place(SAXParseException message) {
      int offset = offset(message.getLineNumber(), message.getColumnNumber());
      ByteRange range = new ByteRange(transaction.source().origin() + offset, 0);
      return transaction.records().stream()
          .filter(record -> record.range().contains(range.offset()))
          .findFirst()
          .map(record -> field(record, range.offset()))
          .orElse(Location.file())
          .at(range);
    }

    /** The place in the record, with the field whose element it is where that is sure. */
    private static Location field(LogicalRecord record, int offset) {
      Location place = Location.of(record);
      return record.fields().stream()
          .filter(field -> field.value().end() == offset || field.value().contains(offset))
          .findFirst()
          .map(field -> place.in(field.number()))
          .orElse(place);
    }

    /** Messages come in the order of the file, so that each line end is looked at once. */
    private int offset(int wantedLine, int column) {
      ByteBuffer bytes = transaction.source().asBuffer();
      int at = lineStart;
      while (line < wantedLine && at < bytes.limit()) {
        if (bytes.get(at++) == '\n') {
          line++;
          lineStart = at;
        }
      }
      return Math.max(0, Math.min(bytes.limit() - 1, lineStart + Math.max(0, column - 2)));
    }
  }
}
