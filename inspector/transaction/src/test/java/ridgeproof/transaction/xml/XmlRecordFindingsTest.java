package ridgeproof.transaction.xml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static ridgeproof.transaction.xml.RawXml.category;
import static ridgeproof.transaction.xml.RawXml.descriptive;
import static ridgeproof.transaction.xml.RawXml.element;
import static ridgeproof.transaction.xml.RawXml.file;
import static ridgeproof.transaction.xml.RawXml.findings;
import static ridgeproof.transaction.xml.RawXml.header;
import static ridgeproof.transaction.xml.RawXml.idc;
import static ridgeproof.transaction.xml.RawXml.path;
import static ridgeproof.transaction.xml.RawXml.print;
import static ridgeproof.transaction.xml.RawXml.read;
import static ridgeproof.transaction.xml.RawXml.said;
import static ridgeproof.transaction.xml.RawXml.subject;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.transaction.TransactionSamples;

/** What is reported of the elements of a record, and what is read of them all the same. */
class XmlRecordFindingsTest {

  private static final String DATE = "ansi-nist:TransactionDate";

  private static String date(String... content) {
    return header(element(DATE, content));
  }

  private static String day(String text) {
    return element("nc:Date", text);
  }

  @Test
  void anElementThatTheSchemaAllowsOnceIsReportedAtItsSecondAndReadEachTime() {
    XmlReading reading = read(file(date(day("2026-03-01"), day("2026-03-02"), day("2026-03-03"))));
    assertEquals(
        List.of("RP-XML-010 record 1 at <nc:Date> #2: a second nc:Date | one nc:Date"),
        findings(reading));
    assertEquals("20260301;20260302;20260303", said(reading.records().get(0), 5));
  }

  @Test
  void whatIsReportedOfOneRecordIsReportedOfAnotherToo() {
    String scale = element("ansi-nist:ImageScaleUnitsCode", "1");
    assertEquals(
        List.of(
            "RP-XML-010 record 2 at <ansi-nist:ImageScaleUnitsCode> #2:"
                + " a second ansi-nist:ImageScaleUnitsCode | one ansi-nist:ImageScaleUnitsCode",
            "RP-XML-010 record 3 at <ansi-nist:ImageScaleUnitsCode> #4:"
                + " a second ansi-nist:ImageScaleUnitsCode | one ansi-nist:ImageScaleUnitsCode"),
        findings(file(header(), print(1, scale, scale), print(2, scale, scale, scale))));
  }

  @Test
  void anElementBehindOneThatItShouldPrecedeIsReportedOnce() {
    String name = element("ansi-nist:TransactionDomainName", "NORAM");
    String version = path("ansi-nist:DomainVersionNumberIdentification/nc:IdentificationID", "4.2");
    String domain = "ansi-nist:TransactionDomain";
    assertEquals(List.of(), findings(file(header(element(domain, version, name)))));
    assertEquals(
        List.of(
            "RP-XML-009 record 1 at <ansi-nist:DomainVersionNumberIdentification>:"
                + " ansi-nist:DomainVersionNumberIdentification"
                + " | before the element that precedes it here"),
        findings(file(header(element(domain, name, version, version)))));
  }

  /** Behind one that is late the next in order is not late. */
  @Test
  void orderIsMeasuredAgainstTheFurthestElement() {
    String category = element("ebts:TransactionCategoryCode", "FAUF");
    String priority = element("ansi-nist:TransactionPriorityValue", "1");
    assertEquals(List.of(), findings(file(header(element(DATE), priority, category))));
    assertEquals(
        List.of(
            "RP-XML-009 record 1 at <ansi-nist:TransactionDate>: ansi-nist:TransactionDate"
                + " | before the element that precedes it here",
            "RP-XML-009 record 1 at <ansi-nist:TransactionPriorityValue>:"
                + " ansi-nist:TransactionPriorityValue"
                + " | before the element that precedes it here"),
        findings(file(header(category, element(DATE), priority))));
  }

  @Test
  void anElementThatIsNotKnownIsReportedOnceForEachParentAndNotRead() {
    String month = "<nc:Month>May<nc:Deep>x</nc:Deep></nc:Month>";
    XmlReading reading =
        read(file(date(month, day("2026-03-01"), month), subject("<Plain b='c'/>", month)));
    assertEquals(
        List.of(
            "RP-XML-005 record 1 at <nc:Month>: [personal] nc:Month"
                + " | an element that ansi-nist:TransactionDate may hold",
            "RP-XML-005 record 2 at <Plain b='c'/>: [personal] Plain"
                + " | an element that ebts:RecordSubject may hold",
            "RP-XML-005 record 2 at <nc:Month> #3: [personal] nc:Month"
                + " | an element that ebts:RecordSubject may hold"),
        findings(reading));
    assertEquals(List.of("1.001 = 1", "1.005 = 20260301"), RawXml.fields(reading.records().get(0)));
  }

  @Test
  void aRecordThatIsNotMappedIsReportedOnceAndItsCategoryAndIdcAreRead() {
    String dna =
        element(
            "itl:PackageDNARecord", category(18), idc(4), "<itl:A/>", element("itl:B", "<itl:C/>"));
    XmlReading reading = read(file(header(), dna, dna));
    String rest = ": [personal] itl:A | an element that itl:PackageDNARecord may hold";
    assertEquals(
        List.of(
            "RP-XML-016 record 2 at <itl:A/>" + rest, "RP-XML-016 record 3 at <itl:A/> #2" + rest),
        findings(reading));
    assertEquals(List.of("18.001 = 18", "18.002 = 4"), RawXml.fields(reading.records().get(2)));
  }

  @Test
  void aValueOfAnotherFormIsReportedAtItsFieldAndKeptAsItIs() {
    XmlReading reading = read(file(date(day("20260301")), birth("noon")));
    assertEquals(
        List.of(
            "RP-XML-007 record 1 field 1.005 at 20260301: \"20260301\""
                + " | a date such as 2026-03-31",
            "RP-XML-007 record 2 field 2.022 at noon: [personal] \"noon\""
                + " | a date such as 2026-03-31"),
        findings(reading));
    assertEquals("20260301", said(reading.records().get(0), 5));
    assertEquals("noon", said(reading.records().get(1), 22));
  }

  private static String birth(String day) {
    return subject(path("nc:PersonBirthDate/nc:Date", day));
  }

  @Test
  void whetherAValueIsShownIsSaidByTheRowOfItsItem() {
    XmlText text = new XmlText(StandardCharsets.UTF_8);
    XmlContext context =
        new XmlContext(RawXml.source(""), TransactionSamples.TABLES, RawXml.LIMITS, text);
    assertTrue(context.isPublic(new FieldNumber(14, 902), 1));
    assertTrue(context.isPublic(new FieldNumber(14, 902), 2));
    assertFalse(context.isPublic(new FieldNumber(14, 902), 3));
    assertTrue(context.isPublic(new FieldNumber(14, 5), 1));
    assertFalse(context.isPublic(new FieldNumber(2, 18), 1));
    assertFalse(context.isPublic(new FieldNumber(14, 777), 1));
  }

  @Test
  void anIndicatorSaysTrueOrFalse() {
    XmlReading reading =
        read(
            file(
                header(), print(1, element("ansi-nist:FingerprintImageStitchedIndicator", "yes"))));
    assertEquals(
        List.of("RP-XML-007 record 2 field 14.027 at yes: \"yes\" | true or false"),
        findings(reading));
    assertEquals("yes", said(reading.records().get(1), 27));
  }

  @Test
  void anEmptyElementHasNoFormToKeep() {
    assertEquals(List.of(), findings(file(date(day("")))));
    assertEquals(List.of(), findings(file(date(day(" \n ")))));
  }

  @Test
  void aCharacterThatIsNoUtf8IsReportedAtItsByteAndTheTextIsKept() {
    String surname = path("ebts:PersonName/nc:PersonSurName", "SPE\u00C7IMEN");
    XmlReading latin =
        read(
            ridgeproof.transaction.record.ByteSource.of(
                file(header(), subject(surname)).getBytes(StandardCharsets.ISO_8859_1)),
            RawXml.LIMITS);
    assertEquals(
        List.of("RP-STR-019 record 2 at \u00C7: byte 0xC7 | UTF-8 characters"), findings(latin));
    assertEquals("SPE\u00C7IMEN", said(latin.records().get(1), 18));
    XmlReading utf8 = read(file(header(), subject(surname)));
    assertEquals(List.of(), findings(utf8));
    assertEquals("SPE\u00C7IMEN", said(utf8.records().get(1), 18));
  }

  @Test
  void whatIsNoBase64IsReportedAtItsFirstCharacter() {
    String image = element("nc:BinaryBase64Object", "aW1h*Z2U=");
    XmlReading reading = read(file(header(), print(1, image)));
    assertEquals(
        List.of(
            "RP-XML-006 record 2 field 14.999 at *: a character of code 0x2A"
                + " | Base64 of whole bytes"),
        findings(reading));
    assertEquals("image", said(reading.records().get(1), 999));
  }

  @Test
  void aRecordCategoryThatIsNotThatOfTheElementIsReported() {
    String changed = print(5).replace(">14<", ">13<");
    assertEquals(
        List.of("RP-XML-017 record 2 idc 5 at 13: record category 13 | record category 14"),
        findings(file(header(), changed)));
    String named = print(5).replace(">14<", ">print<");
    assertEquals(List.of(), findings(file(header(), named)));
  }

  @Test
  void aReferenceToAnIdThatNoElementHasIsReportedAtItsElement() {
    String one = "<nc:A xmlns:s='urn:s' xmlns:ref='urn:P5' s:id='P1'/>";
    String other = "<nc:B xmlns:s='urn:s' s:ref='P1' other='P3'/>";
    String lost = "<nc:C xmlns:s='urn:s' s:ref='P2'/>";
    String envelope = "<envelope>" + other + one + file(header()) + "</envelope>";
    assertEquals(List.of(), findings(envelope));
    assertEquals(
        List.of(
            "RP-XML-011 at "
                + lost
                + ": no element with this id"
                + " | an element with the id that is referred to"),
        findings(envelope.replace("</envelope>", lost + lost + "</envelope>")));
  }

  @Test
  void anElementWithinAnElementOfAValueIsReportedSinceItHidesTheValue() {
    XmlReading reading =
        read(file(header(), descriptive("<nc:CaveatText>a<nc:X>b</nc:X>c</nc:CaveatText>")));
    assertEquals(
        List.of(
            "RP-XML-005 record 2 at <nc:X>: [personal] nc:X | an element that nc:CaveatText may"
                + " hold"),
        findings(reading));
    assertEquals(List.of("2.001 = 2", "2.002 = 0"), RawXml.fields(reading.records().get(1)));
  }
}
