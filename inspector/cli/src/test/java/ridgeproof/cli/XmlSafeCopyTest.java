package ridgeproof.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import javax.xml.XMLConstants;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.SchemaFactory;
import org.junit.jupiter.api.Test;
import ridgeproof.corpus.fault.FaultComposer;
import ridgeproof.examination.Examiner;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.examination.safecopy.Deidentifier;
import ridgeproof.examination.safecopy.SafeCopy;
import ridgeproof.spec.SpecTables;
import ridgeproof.testing.SharedFolder;
import ridgeproof.transaction.reader.ParseLimits;
import ridgeproof.transaction.record.ByteSource;

/** The safe copy of a file in XML is XML, shows the same findings and nothing of the person. */
class XmlSafeCopyTest {

  private static final ExaminationOptions OPTIONS =
      ExaminationOptions.standard().withDepth(Depth.IMAGES).withToday(LocalDate.of(2026, 12, 1));
  private static final Examiner EXAMINER = new Examiner(SpecTables.open(), ParseLimits.standard());
  private static final byte[] CARD = FaultComposer.inXml().clean("fauf-flats");

  private static FindingsReport examined(byte[] file) {
    FindingsReport report = EXAMINER.examine(ByteSource.of(file), OPTIONS);
    assertTrue(report.transaction().isXml());
    return report;
  }

  private static byte[] copyOf(byte[] file) {
    SafeCopy copy = new Deidentifier(EXAMINER, OPTIONS).of(examined(file));
    assertEquals(List.of(), copy.lost());
    return copy.bytes().toArray();
  }

  @Test
  void itIsXmlWithoutAnyValueOfThePersonAndTheSameEachTime() {
    byte[] copy = copyOf(CARD);
    FindingsReport report = examined(copy);
    FindingsReport original = examined(CARD);
    assertEquals(original.transaction().records().size(), report.transaction().records().size());
    assertEquals(
        Set.of(),
        PersonalSearch.of(original.transaction())
            .foundIn(new String(copy, StandardCharsets.UTF_8)));
    for (int i = 0; i < original.images().size(); i++) {
      assertFalse(original.images().get(i).data().equals(report.images().get(i).data()));
    }
    assertArrayEquals(copy, copyOf(CARD));
  }

  @Test
  void aFaultIsStillThere() {
    String changed =
        new String(CARD, StandardCharsets.UTF_8)
            .replaceFirst("<ebts:PersonSexCode>\\w<", "<ebts:PersonSexCode>W<");
    byte[] faulty = changed.getBytes(StandardCharsets.UTF_8);
    List<String> found =
        examined(copyOf(faulty)).findings().stream().map(finding -> finding.ruleId()).toList();
    assertTrue(found.contains("RP-COD-001"), found.toString());
  }

  @Test
  void itIsValidByThePublishedSchemas() throws Exception {
    SchemaFactory.newInstance(XMLConstants.W3C_XML_SCHEMA_NS_URI)
        .newSchema(
            SharedFolder.of("xml", "published schemas")
                .resolve("schemas/ebts/10.0/itl/2011/itl.xsd")
                .toFile())
        .newValidator()
        .validate(new StreamSource(new ByteArrayInputStream(copyOf(CARD))));
  }
}
