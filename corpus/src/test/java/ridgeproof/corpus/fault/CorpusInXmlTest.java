package ridgeproof.corpus.fault;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.xml.XMLConstants;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.Schema;
import javax.xml.validation.SchemaFactory;
import javax.xml.validation.Validator;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.xml.sax.SAXParseException;
import org.xml.sax.helpers.DefaultHandler;
import ridgeproof.corpus.composition.SubjectCache;
import ridgeproof.corpus.composition.TransactionComposer;
import ridgeproof.corpus.scenario.ScenarioReader;
import ridgeproof.spec.SpecTables;
import ridgeproof.testing.SharedFolder;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.reader.ParseLimits;
import ridgeproof.transaction.reader.TransactionReader;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.xml.writer.Loss;
import ridgeproof.transaction.xml.writer.TraditionalDrafts;
import ridgeproof.transaction.xml.writer.XmlTransactionWriter;

/** Sound files of each kind that the corpus has, in XML and back. */
@Tag("slow")
class CorpusInXmlTest {

  /** Its minutiae are of the older format of Type-9, whose elements are not mapped. */
  private static final String OLDER_MINUTIAE = "minutiae-card";

  /** Its type of transaction is not one of EBTS 10.0. */
  private static final String OLDER_TYPE = "palms";

  private static final SpecTables TABLES = SpecTables.open();
  private static final FaultComposer COMPOSER = new FaultComposer();

  private static Transaction read(byte[] bytes) {
    return new TransactionReader(TABLES, ParseLimits.standard()).read(ByteSource.of(bytes));
  }

  @Test
  void theyComeBackByteForByteAndNothingIsLeftOut() throws IOException {
    for (String base : FaultCatalogue.bases()) {
      byte[] traditional = COMPOSER.clean(base);
      ByteArrayOutputStream xml = new ByteArrayOutputStream();
      List<Loss> losses = new XmlTransactionWriter(TABLES).write(read(traditional), xml);
      assertEquals(base.equals(OLDER_MINUTIAE), !losses.isEmpty(), base + " " + losses);
      if (!losses.isEmpty()) {
        continue;
      }
      TraditionalDrafts drafts = new TraditionalDrafts(TABLES);
      assertArrayEquals(traditional, drafts.write(read(xml.toByteArray())), base);
      assertEquals(List.of(), drafts.losses(), base);
    }
  }

  /** Types 8 and 10, which no base of the catalogue has. */
  private static byte[] withFaceAndSignature() {
    String story =
        """
        story = "Face and signature"
        seed = 5
        face = true
        signature = true
        [transaction]
        type = "FAUF"
        version = "0502"
        [prints]
        set = "flats"
        boxes = [15]
        """;
    return new TransactionComposer(new SubjectCache())
        .compose(new ScenarioReader().read("face", story))
        .bytes();
  }

  @Test
  void aFaceAndASignatureComeBackByteForByteToo() throws IOException {
    byte[] traditional = withFaceAndSignature();
    List<Integer> types =
        read(traditional).records().stream().map(record -> record.type()).toList();
    assertTrue(types.containsAll(List.of(8, 10, 14)), types.toString());
    ByteArrayOutputStream xml = new ByteArrayOutputStream();
    assertEquals(List.of(), new XmlTransactionWriter(TABLES).write(read(traditional), xml));
    assertArrayEquals(traditional, new TraditionalDrafts(TABLES).write(read(xml.toByteArray())));
  }

  @Test
  void theyAreValidByThePublishedSchemas() throws Exception {
    Path schemas = SharedFolder.of("xml", "published schemas").resolve("schemas");
    Schema schema =
        SchemaFactory.newInstance(XMLConstants.W3C_XML_SCHEMA_NS_URI)
            .newSchema(schemas.resolve("ebts/10.0/itl/2011/itl.xsd").toFile());
    List<String> objections = new ArrayList<>();
    Map<String, byte[]> files = new LinkedHashMap<>();
    FaultCatalogue.bases().forEach(base -> files.put(base, COMPOSER.clean(base)));
    files.put("face", withFaceAndSignature());
    for (String base : files.keySet()) {
      byte[] xml = new XmlTransactionWriter(TABLES).write(read(files.get(base)));
      Validator validator = schema.newValidator();
      validator.setErrorHandler(
          new DefaultHandler() {
            @Override
            public void error(SAXParseException message) {
              objections.add(base + " " + message.getLineNumber() + " " + message.getMessage());
            }
          });
      validator.validate(new StreamSource(new ByteArrayInputStream(xml)));
    }
    assertTrue(objections.stream().anyMatch(line -> line.startsWith(OLDER_MINUTIAE)));
    assertTrue(objections.stream().anyMatch(line -> line.startsWith(OLDER_TYPE)));
    objections.removeIf(line -> line.startsWith(OLDER_MINUTIAE) || line.startsWith(OLDER_TYPE));
    // A face without a scale (field 10.008 = 0) is one that these schemas do not know.
    objections.removeIf(
        line ->
            line.startsWith("face")
                && (line.contains("ImageScaleUnitsCode") || line.contains("'0'")));
    assertEquals("", String.join("\n", objections));
  }
}
