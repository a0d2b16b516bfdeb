package ridgeproof.transaction.xml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static ridgeproof.transaction.xml.RawXml.END;
import static ridgeproof.transaction.xml.RawXml.START;
import static ridgeproof.transaction.xml.RawXml.element;
import static ridgeproof.transaction.xml.RawXml.fields;
import static ridgeproof.transaction.xml.RawXml.file;
import static ridgeproof.transaction.xml.RawXml.findings;
import static ridgeproof.transaction.xml.RawXml.header;
import static ridgeproof.transaction.xml.RawXml.headerOf;
import static ridgeproof.transaction.xml.RawXml.print;
import static ridgeproof.transaction.xml.RawXml.read;
import static ridgeproof.transaction.xml.RawXml.types;
import static ridgeproof.transaction.xml.RawXml.unread;

import java.util.List;
import org.junit.jupiter.api.Test;
import ridgeproof.finding.Finding;
import ridgeproof.transaction.record.ByteRange;

/** Where XML breaks, what was read counts, and reading goes on with the next record. */
class XmlDamageTest {

  private static final String HEADER = header();
  private static final String PRINT = print(1);
  private static final String NO_MATCH = "an end tag that does not match its start tag";
  private static final String NOT_ALLOWED = "a character that XML does not allow here";
  private static final String TOO_MUCH = "an element nested too deep or with too many attributes";
  private static final String ENDS = "the file ends inside an element";

  /** Each as the offset, the length and what was found. */
  private static List<String> breaks(XmlReading reading) {
    return reading.findings().stream()
        .filter(finding -> finding.ruleId().equals("RP-XML-001"))
        .filter(finding -> finding.required().equals("well-formed XML"))
        .map(XmlDamageTest::line)
        .toList();
  }

  private static String line(Finding finding) {
    ByteRange place = finding.location().bytes().orElseThrow();
    return place.offset() + "+" + place.length() + ": " + finding.observed().text();
  }

  /** A break at the character behind a text that is in the file once. */
  private static String broken(String file, String before, String what) {
    assertEquals(file.indexOf(before), file.lastIndexOf(before), before);
    return file.indexOf(before) + before.length() + "+1: " + what;
  }

  private static ByteRange range(String file, String part) {
    return new ByteRange(file.indexOf(part), part.length());
  }

  @Test
  void anEndTagThatDoesNotMatchEndsItsRecordAndTheNextIsRead() {
    String whole = headerOf("FAUF");
    String broken = whole.replace("</ansi-nist:Transaction>", "</ansi-nist:Tr>");
    String file = file(broken, PRINT, print(2));
    XmlReading reading = read(file);
    assertEquals(List.of(1, 14, 14), types(reading));
    assertEquals(List.of(broken(file, "</ansi-nist:T", NO_MATCH)), breaks(reading));
    assertEquals(1, reading.findings().size());
    assertEquals(List.of("1.001 = 1", "1.004 = FAUF"), fields(reading.records().get(0)));
    String first = broken.substring(0, broken.indexOf("r></itl:Pack"));
    assertEquals(range(file, first), reading.records().get(0).range());
    assertEquals(range(file, PRINT), reading.records().get(1).range());
    assertEquals(List.of(), reading.unread());
  }

  @Test
  void whatIsNotReadBetweenABreakAndTheNextRecordIsNamed() {
    String file = file(HEADER, "</x:y>and text", PRINT);
    XmlReading reading = read(file);
    assertEquals(List.of(1, 14), types(reading));
    assertEquals(List.of(broken(file, "</x:", NO_MATCH)), breaks(reading));
    assertEquals(List.of("</x:y>and text"), unread(reading));
  }

  @Test
  void aRecordWhoseEndTagIsMissingEndsWhereTheNextBegins() {
    String category = element("ebts:TransactionCategoryCode", "FAUF");
    String open = header(category).replace("</itl:PackageInformationRecord>", "");
    for (String end : List.of("", "</ansi-nist:Transaction>")) {
      String first = end.isEmpty() ? open : open.replace(end, "");
      String file = file(first, PRINT, print(2));
      XmlReading reading = read(file);
      assertEquals(List.of(1, 14, 14), types(reading));
      assertEquals(List.of("1.001 = 1", "1.004 = FAUF"), fields(reading.records().get(0)));
      assertEquals(range(file, first), reading.records().get(0).range());
      assertEquals(range(file, PRINT), reading.records().get(1).range());
      String parent = end.isEmpty() ? "itl:PackageInformationRecord" : "ansi-nist:Transaction";
      assertEquals(
          "RP-XML-005 record 1 at <itl:PackageFingerprintImageRecord>: [personal]"
              + " itl:PackageFingerprintImageRecord | an element that "
              + parent
              + " may hold",
          findings(reading).get(0));
      assertEquals(file.length() - 2 + "+1: " + NO_MATCH, breaks(reading).get(0));
      assertEquals(2, reading.findings().size());
    }
  }

  /** What is within an element that is not known is not looked at. */
  @Test
  void aRecordWithinAnUnknownElementOfARecordIsPartOfIt() {
    String category = element("ebts:TransactionCategoryCode", "FAUF");
    XmlReading reading = read(file(header(element("own:Original", PRINT), category)));
    assertEquals(List.of(1), types(reading));
    assertEquals(List.of("1.001 = 1", "1.004 = FAUF"), fields(reading.records().get(0)));
    assertEquals(1, reading.findings().size());
  }

  @Test
  void aFileThatEndsInAnElementIsReportedAtItsEnd() {
    String whole = file(HEADER, print(1, element("ansi-nist:ImageScaleUnitsCode", "1")));
    for (String end : List.of("</itl:FingerprintImage>", "itl:FingerprintImage></itl:P", END)) {
      String cut = whole.substring(0, whole.lastIndexOf(end));
      XmlReading reading = read(cut);
      assertEquals(List.of(1, 14), types(reading));
      assertEquals(
          List.of("14.001 = 14", "14.002 = 1", "14.008 = 1"), fields(reading.records().get(1)));
      assertEquals(List.of(cut.length() + "+0: " + ENDS), breaks(reading));
      assertEquals(1, reading.findings().size());
      assertEquals(cut.length(), reading.records().get(1).range().end());
      assertEquals(List.of(), reading.unread());
    }
  }

  @Test
  void aRecordOfWhichOnlyTheStartTagBeganIsNone() {
    String cut = START + HEADER + "<itl:PackageFingerprintIm";
    assertEquals(List.of(1), types(read(cut)));
    assertEquals(List.of(cut.length() + "+0: " + ENDS), breaks(read(cut)));
    assertEquals(List.of("<itl:PackageFingerprintIm"), unread(read(cut)));
  }

  @Test
  void aDocumentTypeIsReportedAsOneAndWhatFollowsIsRead() {
    for (String place : List.of("", START + HEADER)) {
      String file = place + "<!DOCTYPE a [<!ENTITY b 'c'>]>" + file(HEADER, PRINT);
      XmlReading reading = read(file);
      assertEquals(
          List.of("RP-XML-002 at <!: a document type declaration | no document type declaration"),
          findings(reading).subList(0, 1));
      assertEquals(List.of("<!DOCTYPE a [<!ENTITY b 'c'>]>"), unread(reading));
      assertEquals(14, reading.records().get(reading.records().size() - 1).type());
    }
  }

  @Test
  void entitiesAreReportedOnceAndNotResolved() {
    String date = element("ansi-nist:TransactionDate", element("nc:Date", "2026&b;-03&c;-02&amp;"));
    XmlReading reading = read(file(header(date), PRINT));
    assertEquals(
        "RP-XML-002 at &: a reference to an entity | no entities but those of XML itself",
        findings(reading).get(0));
    assertEquals(
        List.of("RP-XML-002", "RP-XML-007"),
        reading.findings().stream().map(Finding::ruleId).toList());
    assertEquals("2026&b;-03&c;-02&", RawXml.said(reading.records().get(0), 5));
  }

  @Test
  void elementsWithinEachOtherAreReadToADepthOfOneHundred() {
    String opens = "<x:a>".repeat(99);
    String closes = "</x:a>".repeat(99);
    assertEquals(List.of(), findings(file(HEADER, opens, closes, PRINT)));
    String file = file(HEADER, opens, "<x:b>", PRINT);
    XmlReading reading = read(file);
    assertEquals(List.of(broken(file, opens, TOO_MUCH)), breaks(reading));
    assertEquals(List.of(1, 14), types(reading));
    assertEquals(List.of("<x:b>"), unread(reading));
  }

  @Test
  void anElementMayHaveSixtyFourAttributes() {
    StringBuilder most = new StringBuilder("<b");
    for (int i = 0; i < 64; i++) {
      most.append(" a").append(i).append("=''");
    }
    assertEquals(List.of(), findings(file(HEADER, most + "/>", PRINT)));
    XmlReading reading = read(file(HEADER, most + " more=''/>", PRINT));
    assertEquals(1, breaks(reading).size());
    assertEquals(TOO_MUCH, reading.findings().get(0).observed().text());
    assertEquals(List.of(1, 14), types(reading));
  }

  @Test
  void aCharacterThatXmlDoesNotAllowIsNamed() {
    String control = file(HEADER, "\u0001", PRINT);
    assertEquals(List.of(broken(control, HEADER, NOT_ALLOWED)), breaks(read(control)));
    assertEquals(List.of(1, 14), types(read(control)));
    String less = file(headerOf("a<b"), PRINT);
    XmlReading reading = read(less);
    assertEquals(List.of(broken(less, "a<b", NOT_ALLOWED)), breaks(reading));
    assertEquals(less.indexOf("a<b") + 3, reading.records().get(0).range().end());
    assertEquals(List.of(1, 14), types(reading));
    String tag = file(HEADER, PRINT).replaceFirst("xmlns:nc", "<xmlns:nc");
    assertEquals(
        broken(tag, START.substring(0, START.indexOf("xmlns:nc")), "text that is no XML"),
        breaks(read(tag)).get(0));
    assertEquals(List.of(1, 14), types(read(tag)));
  }

  @Test
  void aTagThatHasNoNameIsUnreadAsAWhole() {
    String file = file(HEADER, "< a>", PRINT);
    XmlReading reading = read(file);
    assertEquals(List.of(broken(file, HEADER + "<", NOT_ALLOWED)), breaks(reading));
    assertEquals(List.of("< a>"), unread(reading));
    assertEquals(List.of(1, 14), types(reading));
  }

  @Test
  void aPackageThatBreaksInItsTagIsPassedOver() {
    StringBuilder attributes = new StringBuilder();
    for (int i = 0; i < 70; i++) {
      attributes.append(" a").append(i).append("=''");
    }
    String file = file(HEADER, PRINT).replaceFirst(">", attributes + ">");
    XmlReading reading = read(file);
    assertEquals(List.of(1, 14), types(reading));
    assertEquals("0+1: " + TOO_MUCH, breaks(reading).get(0));
  }

  @Test
  void theEndOfAPackageIsNoSecondBreak() {
    String file = file("</x:y>", PRINT);
    assertEquals(List.of(broken(file, "</x:", NO_MATCH)), breaks(read(file)));
  }

  @Test
  void aCommentThatIsNotClosedHidesWhatFollowsAndThatIsNamed() {
    String file = file(HEADER, "<!-- ", PRINT);
    XmlReading reading = read(file);
    assertEquals(List.of(1), types(reading));
    assertEquals(List.of(file.length() - 1 + "+1: " + ENDS), breaks(reading));
    int start = file.indexOf("<!-- ");
    assertEquals(List.of(new ByteRange(start, file.length() - start)), reading.unread());
  }

  @Test
  void aSecondBreakIsReportedToo() {
    String file = file(HEADER, "</x:y>", PRINT, "</w:z>", print(2));
    XmlReading reading = read(file);
    assertEquals(List.of(1, 14, 14), types(reading));
    assertEquals(
        List.of(broken(file, "</x:", NO_MATCH), broken(file, "</w:", NO_MATCH)), breaks(reading));
    assertEquals(2, reading.findings().size());
    assertEquals(List.of(), reading.unread());
  }

  @Test
  void aBreakInTheLastRecordLeavesTheRestUnread() {
    String file = START + HEADER + PRINT.replace("</itl:FingerprintImage>", "</b>more") + END;
    XmlReading reading = read(file);
    assertEquals(List.of(file.indexOf("b>more") + "+1: " + NO_MATCH), breaks(reading));
    int end = file.indexOf("b>more");
    assertEquals(end, reading.records().get(1).range().end());
    assertEquals(List.of(new ByteRange(end, file.length() - end)), reading.unread());
  }

  @Test
  void paddingBehindThePackageIsABreakAndNothingUnread() {
    String file = file(HEADER) + "\u0000\u0000";
    XmlReading reading = read(file);
    assertEquals(List.of(file.length() - 2 + "+1: " + NOT_ALLOWED), breaks(reading));
    assertEquals(List.of(), reading.unread());
  }
}
