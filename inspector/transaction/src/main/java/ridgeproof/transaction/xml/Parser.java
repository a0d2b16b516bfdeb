package ridgeproof.transaction.xml;

import com.ctc.wstx.api.WstxInputProperties;
import com.ctc.wstx.exc.WstxEOFException;
import com.ctc.wstx.exc.WstxUnexpectedCharException;
import com.ctc.wstx.stax.WstxInputFactory;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import org.codehaus.stax2.XMLStreamReader2;
import ridgeproof.transaction.record.ByteSource;

/** A parser of XML that resolves nothing from outside and nothing that a document declares. */
final class Parser {

  /** Deeper than any package of the standard, in any envelope. */
  static final int MAX_DEPTH = 100;

  static final int MAX_ATTRIBUTES = 64;
  static final int MAX_ATTRIBUTE_LENGTH = 64 * 1024;

  /** Made once, since it costs more than reading a short file; never changed after that. */
  private static final WstxInputFactory FACTORY = factory();

  private static WstxInputFactory factory() {
    WstxInputFactory factory = new WstxInputFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    factory.setProperty(XMLInputFactory.IS_REPLACING_ENTITY_REFERENCES, false);
    factory.setProperty(XMLInputFactory.IS_COALESCING, false);
    // A prefix that is not declared is a finding here, and no reason to stop.
    factory.setProperty(XMLInputFactory.IS_NAMESPACE_AWARE, false);
    // Records without an element around them are read too.
    factory.setProperty(
        WstxInputProperties.P_INPUT_PARSING_MODE, WstxInputProperties.PARSING_MODE_FRAGMENT);
    factory.setProperty(WstxInputProperties.P_MAX_ELEMENT_DEPTH, MAX_DEPTH);
    factory.setProperty(WstxInputProperties.P_MAX_ATTRIBUTES_PER_ELEMENT, MAX_ATTRIBUTES);
    factory.setProperty(WstxInputProperties.P_MAX_ATTRIBUTE_SIZE, MAX_ATTRIBUTE_LENGTH);
    return factory;
  }

  XMLStreamReader2 parse(ElidingReader characters) throws XMLStreamException {
    return (XMLStreamReader2) FACTORY.createXMLStreamReader(characters);
  }

  /** Why reading stopped, in words for a person. */
  static String inWords(XMLStreamException stop, ByteSource source, int at) {
    String message = String.valueOf(stop.getMessage());
    if (message.contains("Maximum") || message.contains("limit")) {
      return "an element nested too deep or with too many attributes";
    }
    if (stop instanceof WstxEOFException || at >= source.length()) {
      return "the file ends inside an element";
    }
    if (message.contains("close tag")) {
      return "an end tag that does not match its start tag";
    }
    if (stop instanceof WstxUnexpectedCharException) {
      return "a character that XML does not allow here";
    }
    return "text that is no XML";
  }
}
