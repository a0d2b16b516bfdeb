package ridgeproof.examination.example;

import static java.nio.charset.StandardCharsets.UTF_16;
import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.Optional;
import java.util.regex.Pattern;
import ridgeproof.examination.Examiner;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.SampleCard;
import ridgeproof.examination.SampleXml;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.examination.xml.SchemaCheck;
import ridgeproof.transaction.reader.ParseLimits;
import ridgeproof.transaction.record.ByteSource;

/** The card in XML with one thing of the XML changed. */
final class XmlExamples {

  private static final String CARD = SampleXml.card();
  private static final String RECORD = "<itl:PackageInformationRecord>";
  private static final String WHOLE_RECORD =
      "(?s)<itl:PackageInformationRecord>.*?</itl:PackageInformationRecord>";
  private static final String CATEGORY =
      "RecordCategoryCode>02</ansi-nist:RecordCategoryCode>\n    <";

  private final ExampleList list = new ExampleList("xml");

  private XmlExamples() {
    xml();
    elements();
    records();
  }

  static ExampleList list() {
    return new XmlExamples().list;
  }

  private void xml() {
    changed("RP-XML-001", "</nc:Date>", "</nc:Day>");
    changed("RP-XML-002 type", "<itl:NIST", "<!DOCTYPE a [<!ENTITY b 'c'>]><itl:NIST");
    changed("RP-XML-002 entity", "<nc:Date>", "<nc:Date>&b;");
    changed("RP-XML-003", "niem-core/2.0", "niem-core/0.1");
    changed("RP-XML-014", "UTF-8", "EBCDIC-37");
    list.examined("RP-XML-018", () -> examine(CARD.getBytes(UTF_16), Optional.empty()));
    list.examined(
        "RP-XML-008",
        () -> examine(CARD.getBytes(UTF_8), Optional.of(SampleXml.schemaOfOneRecord())));
  }

  private void elements() {
    changed("RP-XML-005", "<nc:Date>", "<nc:Month>May</nc:Month><nc:Date>");
    changed("RP-XML-006", "<nc:BinaryBase64Object>", "<nc:BinaryBase64Object>*");
    changed("RP-XML-007", "<nc:Date>2026-03-02<", "<nc:Date>20260302<");
    text(
        "RP-XML-009",
        CARD.replaceFirst(
            "(?s)(<ansi-nist:RecordCategoryCode>01</ansi-nist:RecordCategoryCode>)"
                + "(.*?</ansi-nist:Transaction>)",
            "$2$1"));
    changed("RP-XML-010", "<nc:Date>", "<nc:Date>2026-03-02</nc:Date><nc:Date>");
    changed("RP-XML-011", RECORD, RECORD + "<a:b xmlns:a='u' a:ref='x'/>");
  }

  private void records() {
    text("RP-XML-004", CARD.replace("itl:NISTBiometricInformationExchangePackage", "itl:Some"));
    text("RP-XML-012", CARD.replaceFirst(WHOLE_RECORD, ""));
    text("RP-XML-013", CARD.replaceFirst("(" + WHOLE_RECORD + ")", "$1$1"));
    String one = CARD.substring(CARD.indexOf("<itl:"));
    text("RP-XML-015", "<envelope>" + one + one + "</envelope>");
    text("RP-XML-016", withDna("15"));
    text("RP-FLD-005 in a record of which little is read", withDna("1x"));
    changed("RP-XML-017", CATEGORY, CATEGORY.replace("02", "13"));
  }

  /** The card with a record of which no more than the category and the IDC is read. */
  private static String withDna(String number) {
    String category = "<ansi-nist:RecordCategoryCode>18</ansi-nist:RecordCategoryCode>";
    String idc =
        "<ansi-nist:ImageReferenceIdentification><nc:IdentificationID>"
            + number
            + "</nc:IdentificationID>"
            + "</ansi-nist:ImageReferenceIdentification>";
    String summary = "ansi-nist:ContentRecordSummary>";
    return CARD.replace("ContentRecordQuantity>15<", "ContentRecordQuantity>16<")
        .replace(
            "</ansi-nist:TransactionContentSummary>",
            "<"
                + summary
                + idc
                + category
                + "</"
                + summary
                + "</ansi-nist:TransactionContentSummary>")
        .replace(
            "</itl:NIST",
            "<itl:PackageDNARecord>"
                + category
                + idc
                + "<itl:Any/></itl:PackageDNARecord></itl:NIST");
  }

  private void changed(String example, String old, String by) {
    if (!CARD.contains(old)) {
      throw new IllegalArgumentException(example + ": the card has no " + old);
    }
    text(example, CARD.replaceFirst(Pattern.quote(old), by));
  }

  private void text(String example, String xml) {
    list.examined(example, () -> examine(xml.getBytes(UTF_8), Optional.empty()));
  }

  private static FindingsReport examine(byte[] xml, Optional<SchemaCheck> schemas) {
    return new Examiner(SampleCard.TABLES, ParseLimits.standard(), schemas)
        .examine(
            ByteSource.of(xml),
            ExaminationOptions.standard().withDepth(Depth.STRUCTURE).withToday(SampleCard.TODAY));
  }
}
