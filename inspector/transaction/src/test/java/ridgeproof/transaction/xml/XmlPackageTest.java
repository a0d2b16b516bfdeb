package ridgeproof.transaction.xml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static ridgeproof.transaction.xml.RawXml.END;
import static ridgeproof.transaction.xml.RawXml.NAME;
import static ridgeproof.transaction.xml.RawXml.NAMESPACES;
import static ridgeproof.transaction.xml.RawXml.START;
import static ridgeproof.transaction.xml.RawXml.element;
import static ridgeproof.transaction.xml.RawXml.file;
import static ridgeproof.transaction.xml.RawXml.findings;
import static ridgeproof.transaction.xml.RawXml.header;
import static ridgeproof.transaction.xml.RawXml.headerOf;
import static ridgeproof.transaction.xml.RawXml.print;
import static ridgeproof.transaction.xml.RawXml.read;
import static ridgeproof.transaction.xml.RawXml.shown;
import static ridgeproof.transaction.xml.RawXml.subject;
import static ridgeproof.transaction.xml.RawXml.types;
import static ridgeproof.transaction.xml.RawXml.unread;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import ridgeproof.finding.Finding;
import ridgeproof.spec.layout.RecordTypeRow.Encoding;
import ridgeproof.transaction.record.ByteRange;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.record.CharacterEncoding;
import ridgeproof.transaction.record.LogicalRecord;
import ridgeproof.transaction.record.Notation;

/** The element around the records, their order, and what stands beside it. */
class XmlPackageTest {

  private static final String HEADER = header();
  private static final String PRINT = print(1);
  private static final String DECLARATION = "<?xml version='1.0' encoding='UTF-8'?>";

  private static List<Integer> ordinals(XmlReading reading) {
    return reading.records().stream().map(LogicalRecord::ordinal).toList();
  }

  @Test
  void recordsAreThoseOfThePackageInItsOrderEachItsWholeElement() {
    XmlReading reading = read(DECLARATION + file(HEADER, subject(), PRINT));
    assertEquals(List.of(1, 2, 14), types(reading));
    assertEquals(List.of(1, 2, 3), ordinals(reading));
    assertEquals(List.of(), findings(reading));
    assertEquals(List.of(), reading.unread());
    assertEquals(CharacterEncoding.UTF_8, reading.encoding());
    LogicalRecord first = reading.records().get(0);
    assertEquals(HEADER, shown(reading, first.range()));
    assertEquals(first.range(), first.bytes().range());
    assertEquals(
        new ByteRange(
            DECLARATION.length() + START.length() + HEADER.length() + subject().length(),
            PRINT.length()),
        reading.records().get(2).range());
  }

  @Test
  void anEnvelopeMayBeAroundThePackageAndAnyPrefixInFrontOfNames() {
    String own = file(HEADER, PRINT).replace("itl:", "p:").replace("xmlns:itl", "xmlns:p");
    XmlReading reading =
        read("<e:Envelope xmlns:e='urn:e'><e:Body>" + own + "</e:Body></e:Envelope>\n");
    assertEquals(List.of(1, 14), types(reading));
    assertEquals(List.of(), findings(reading));
    assertEquals(List.of(), reading.unread());
  }

  @Test
  void whatIsNoTransactionHasNeitherRecordsNorFindings() {
    XmlReading reading = read("<a xmlns='urn:a' ref='b'><b/></a> and more");
    assertEquals(List.of(), reading.records());
    assertEquals(List.of(), findings(reading));
    assertEquals(List.of(), reading.unread());
  }

  @Test
  void aPackageWithoutRecordsHasAnEmptyFirstRecord() {
    XmlReading reading = read(file());
    assertEquals(
        List.of(
            "RP-XML-012: no itl:PackageInformationRecord"
                + " | one itl:PackageInformationRecord before the other records"),
        findings(reading));
    LogicalRecord record = reading.records().get(0);
    assertEquals(List.of(1), types(reading));
    assertEquals(1, record.ordinal());
    assertEquals(Encoding.TAGGED, record.encoding());
    assertEquals(Notation.XML, record.notation());
    assertEquals(new ByteRange(0, 0), record.range());
    assertEquals(new ByteRange(0, 0), record.bytes().range());
    assertEquals(List.of(), record.fields());
  }

  @Test
  void recordsWithoutAFirstOneStandBehindAnEmptyOne() {
    XmlReading reading = read(file(PRINT, print(2)));
    assertEquals(List.of(1, 14, 14), types(reading));
    assertEquals(List.of(1, 2, 3), ordinals(reading));
    assertEquals(1, reading.findings().size());
    assertEquals("RP-XML-012", reading.findings().get(0).ruleId());
  }

  @Test
  void aFirstRecordBehindOthersIsReportedWhereItIsAndComesFirst() {
    XmlReading reading = read(file(PRINT, HEADER, print(2)));
    assertEquals(List.of(1, 14, 14), types(reading));
    assertEquals(List.of(1, 2, 3), ordinals(reading));
    assertEquals(
        List.of(
            "RP-XML-009 record 2 at "
                + HEADER
                + ": itl:PackageInformationRecord"
                + " | before all other records"),
        findings(reading));
    assertEquals(HEADER, shown(reading, reading.records().get(0).range()));
  }

  @Test
  void twoFirstRecordsAreBothRead() {
    XmlReading reading = read(file(HEADER, PRINT, HEADER));
    assertEquals(List.of(1, 14, 1), types(reading));
    assertEquals(
        List.of(
            "RP-XML-013 record 3 at <itl:PackageInformationRecord> #2:"
                + " a second itl:PackageInformationRecord | one in a file"),
        findings(reading));
  }

  @Test
  void recordsWithoutAPackageAreReportedOnce() {
    String some = "<some" + NAMESPACES + ">" + HEADER + PRINT + "</some>";
    XmlReading reading = read(some);
    assertEquals(List.of(1, 14), types(reading));
    assertEquals(
        List.of(
            "RP-XML-004 record 1 at <itl:PackageInformationRecord>:"
                + " itl:PackageInformationRecord | within "
                + NAME),
        findings(reading));
  }

  @Test
  void aSecondPackageIsReportedOnceAndAllAreRead() {
    String one = file(HEADER);
    XmlReading reading = read("<envelope>" + one + file(PRINT) + file(PRINT) + "</envelope>");
    assertEquals(List.of(1, 14, 14), types(reading));
    assertEquals(
        List.of(
            "RP-XML-015 at "
                + twice(START)
                + ": a second "
                + NAME
                + " | one transaction in a file"),
        findings(reading));
  }

  private static String twice(String start) {
    return start.substring(0, 30) + "..." + start.substring(start.length() - 30) + " #2";
  }

  @Test
  void aNamespaceThatIsNotOneOfTheEncodingIsReportedOnceForItsPrefix() {
    String other = file(headerOf("FAUF"), PRINT).replace("biometrics/1.0", "biometrics/0.9");
    assertEquals(
        List.of(
            "RP-XML-003 at <ansi-nist:RecordCategoryCode>:"
                + " ansi-nist: http://niem.gov/niem/biometrics/0.9 | a namespace of the encoding"),
        findings(other));
    String noneAtAll = file(HEADER, PRINT).replaceFirst(" xmlns:ansi-nist='[^']*'", "");
    assertEquals(
        List.of(
            "RP-XML-003 at <ansi-nist:RecordCategoryCode>: ansi-nist: no namespace"
                + " | a namespace of the encoding"),
        findings(noneAtAll));
  }

  @Test
  void namesWithoutAPrefixAreOfTheDefaultNamespace() {
    String bare = file(HEADER).replace("itl:", "");
    assertEquals(List.of(), findings(bare.replace("xmlns:itl", "xmlns")));
    assertEquals(
        List.of(
            "RP-XML-003 at "
                + bare.substring(0, 30)
                + "..."
                + START.substring(START.length() - 30)
                + ": no namespace | a namespace of the encoding"),
        findings(bare.replace("xmlns:itl", "xmlnsitl")));
    assertEquals(List.of(1), types(read(bare.replace("xmlns:itl", "xmlnsitl"))));
  }

  @Test
  void aPrefixIsWhatTheInnermostElementDeclaresAndAgainTheOuterBehindIt() {
    String inner =
        HEADER.replace(
            "<itl:PackageInformationRecord", "<itl:PackageInformationRecord xmlns:itl='urn:x'");
    String outer = "<itl:PackageInformationRecord xmlns:itl='urn:x'>";
    assertEquals(
        List.of("RP-XML-003 at " + outer + ": itl: urn:x | a namespace of the encoding"),
        findings(file(inner, PRINT)));
  }

  @Test
  void whatAnElementDeclaresHoldsWithinItAlone() {
    String declared = " xmlns:ansi-nist='http://niem.gov/niem/biometrics/1.0'";
    String without = START.replace(declared, "");
    String inner = HEADER.replace("InformationRecord>", "InformationRecord" + declared + ">");
    inner =
        inner.replace(
            "</itl:PackageInformationRecord" + declared, "</itl:PackageInformationRecord");
    assertEquals(List.of(), findings(without + inner + END));
    assertEquals(
        List.of(
            "RP-XML-003 at <ansi-nist:RecordCategoryCode> #2: ansi-nist: no namespace"
                + " | a namespace of the encoding"),
        findings(without + inner + PRINT + END));
  }

  /** The source may be a part of a file, and places are those of the file. */
  @Test
  void placesAreThoseOfTheFileThatTheSourceIsAPartOf() {
    String changed =
        print(5, element("nc:BinaryBase64Object", "aW1h*Z2U=")).replace(">14<", ">13<");
    String file = "-" + file(HEADER, "<a:b ref='c'/>", changed, "</b>", file(PRINT)) + "text";
    XmlReading reading = read(file);
    XmlReading part =
        read(ByteSource.of(file.getBytes(StandardCharsets.UTF_8), 5_000), RawXml.LIMITS);
    assertEquals(
        List.of(
            "RP-XML-006",
            "RP-XML-017",
            "RP-XML-001",
            "RP-XML-015",
            "RP-XML-001",
            "RP-STR-003",
            "RP-XML-011"),
        part.findings().stream().map(Finding::ruleId).toList());
    assertEquals(findings(reading), findings(part));
    assertEquals(unread(reading), unread(part));
    assertEquals(
        reading.records().get(1).range().offset() + 5_000, part.records().get(1).range().offset());
    assertEquals("image", RawXml.said(part.records().get(1), 999));
  }

  @Test
  void otherBytesBeforeTheXmlAreReportedWithTheirNumber() {
    String before = "From: the harbour\n";
    XmlReading reading = read(before + file(HEADER));
    assertEquals(
        List.of("RP-STR-003 at " + before + ": 18 bytes | a file that begins with its XML"),
        findings(reading));
    assertEquals(List.of(before), unread(reading));
    assertEquals(
        List.of("RP-STR-003 at -: 1 byte | a file that begins with its XML"),
        findings("-" + file(HEADER)));
    assertEquals(
        List.of("RP-STR-003 at abc: 3 bytes | a file that begins with its XML"),
        findings("abc" + file(HEADER)));
  }

  @Test
  void aByteOrderMarkMayStandBeforeTheXml() {
    assertEquals(List.of(), findings("\uFEFF" + DECLARATION + file(HEADER)));
    assertEquals(List.of(), findings("\uFEFF" + file(HEADER)));
    assertEquals(List.of(), read("\uFEFF" + DECLARATION + file(HEADER)).unread());
  }

  @Test
  void blanksBeforeADeclarationAreReportedAndThoseBeforeATagAreNot() {
    assertEquals(
        List.of("RP-STR-003 at \r\n: 2 bytes | a file that begins with its XML"),
        findings("\r\n" + DECLARATION + file(HEADER)));
    assertEquals(List.of(), findings("\r\n" + file(HEADER)));
  }

  @Test
  void textBehindThePackageIsReportedAtItsFirstPieceAndNotRead() {
    String file = file(HEADER);
    XmlReading one = read(file + "\r\nSent from the harbour\r\n");
    assertEquals(
        List.of(
            "RP-STR-013 at \r\nSent from the harbour\r\n: text behind the last element"
                + " | the file ends with the last record"),
        findings(one));
    assertEquals(List.of("\r\nSent from the harbour\r\n"), unread(one));
    XmlReading two = read(file + "Sent<!-- -->from");
    assertEquals(
        List.of(
            "RP-STR-013 at Sent: text behind the last element"
                + " | the file ends with the last record"),
        findings(two));
    assertEquals(List.of("Sent<!-- -->from"), unread(two));
    assertEquals(
        "RP-STR-013 at text: text behind the last element | the file ends with the last record",
        findings(file() + "text").get(0));
    assertEquals(List.of(), findings(file + "\r\n \t\r\n"));
    assertEquals(List.of(), findings("<a>Text within the envelope" + file + "and here</a>"));
  }

  @Test
  void theCharacterSetThatIsDeclaredIsThatOfTheText() {
    String surname = subject(RawXml.path("ebts:PersonName/nc:PersonSurName", "SPE\u00C7IMEN"));
    String file = "<?xml version=\"1.0\" encoding=\"ISO-8859-1\"?>" + file(HEADER, surname);
    XmlReading reading =
        read(ByteSource.of(file.getBytes(StandardCharsets.ISO_8859_1)), RawXml.LIMITS);
    assertEquals(List.of(), findings(reading));
    assertEquals(CharacterEncoding.LATIN_1, reading.encoding());
    assertEquals("SPE\u00C7IMEN", RawXml.said(reading.records().get(1), 18));
  }

  @Test
  void aCharacterSetThatIsNotReadIsReportedAtItsDeclaration() {
    String declaration = "<?xml version='1.0' encoding='EBCDIC-37'?>";
    XmlReading reading = read(declaration + file(HEADER));
    assertEquals(
        List.of("RP-XML-014 at " + declaration + ": EBCDIC-37 | UTF-8"), findings(reading));
    assertEquals(CharacterEncoding.UTF_8, reading.encoding());
    assertEquals(List.of(1), types(reading));
  }

  @Test
  void xmlOfTwoBytesACharacterIsReadByACopy() {
    for (var set : List.of(StandardCharsets.UTF_16BE, StandardCharsets.UTF_16LE)) {
      for (String mark : List.of("", "\uFEFF")) {
        String plain = mark + file(HEADER, subject());
        XmlReading reading = read(ByteSource.of(plain.getBytes(set)), RawXml.LIMITS);
        assertEquals(List.of(1, 2), types(reading));
        assertEquals(List.of(), findings(reading));
        assertEquals(
            file(HEADER, subject()), reading.source().latin1(0, reading.source().length()));
      }
    }
  }

  @Test
  void xmlOfTwoBytesACharacterThatDeclaresOneIsReportedAtItsDeclaration() {
    XmlReading reading =
        read(
            ByteSource.of((DECLARATION + file(HEADER)).getBytes(StandardCharsets.UTF_16)),
            RawXml.LIMITS);
    assertEquals(
        List.of(
            "RP-XML-018 at "
                + DECLARATION
                + ": UTF-16, declared as UTF-8"
                + " | the character set that the file declares"),
        findings(reading));
    for (String declared : List.of("UTF-16", "utf-16le")) {
      String text = DECLARATION.replace("UTF-8", declared) + file(HEADER);
      assertEquals(
          List.of(),
          findings(read(ByteSource.of(text.getBytes(StandardCharsets.UTF_16)), RawXml.LIMITS)));
    }
    String odd = DECLARATION.replace("UTF-8", "EBCDIC-37");
    assertEquals(
        List.of("RP-XML-014 at " + odd + ": EBCDIC-37 | UTF-8"),
        findings(
            read(
                ByteSource.of((odd + file(HEADER)).getBytes(StandardCharsets.UTF_16)),
                RawXml.LIMITS)));
  }
}
