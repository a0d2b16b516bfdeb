package ridgeproof.examination;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.StringReader;
import javax.xml.XMLConstants;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.SchemaFactory;
import org.xml.sax.SAXException;
import ridgeproof.examination.xml.SchemaCheck;
import ridgeproof.transaction.reader.ParseLimits;
import ridgeproof.transaction.reader.TransactionReader;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.xml.writer.XmlTransactionWriter;

/** The sample card in XML, and a schema that it departs from. */
public final class SampleXml {

  /** A package of one record. */
  private static final String ONE_RECORD =
      """
      <xs:schema xmlns:xs='http://www.w3.org/2001/XMLSchema'
          targetNamespace='http://biometrics.nist.gov/standard/2011'>
        <xs:element name='NISTBiometricInformationExchangePackage'>
          <xs:complexType><xs:sequence>
            <xs:any processContents='skip'/>
          </xs:sequence></xs:complexType>
        </xs:element>
      </xs:schema>""";

  private SampleXml() {}

  /** The rolled card, sound. */
  public static String card() {
    ByteSource traditional = ByteSource.of(SampleCard.rolledTagged().bytes());
    return new String(
        new XmlTransactionWriter(SampleCard.TABLES)
            .write(
                new TransactionReader(SampleCard.TABLES, ParseLimits.standard()).read(traditional)),
        UTF_8);
  }

  /** A check by a schema that allows one record alone. */
  public static SchemaCheck schemaOfOneRecord() {
    try {
      return new SchemaCheck(
          SchemaFactory.newInstance(XMLConstants.W3C_XML_SCHEMA_NS_URI)
              .newSchema(new StreamSource(new StringReader(ONE_RECORD))));
    } catch (SAXException e) {
      throw new IllegalStateException(e);
    }
  }
}
