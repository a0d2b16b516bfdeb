package ridgeproof.examination.xml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import ridgeproof.examination.Examiner;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.SampleCard;
import ridgeproof.examination.SampleXml;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.finding.Finding;
import ridgeproof.transaction.reader.ParseLimits;
import ridgeproof.transaction.record.ByteSource;

/** What is reported of XML as such. */
class XmlRulesTest {

  private static final String CARD = SampleXml.card();

  private static FindingsReport examine(String xml, Optional<SchemaCheck> schemas) {
    ExaminationOptions options =
        ExaminationOptions.standard()
            .withDepth(Depth.STRUCTURE)
            .withToday(LocalDate.of(2026, 6, 1));
    return new Examiner(SampleCard.TABLES, ParseLimits.standard(), schemas)
        .examine(ByteSource.of(xml.getBytes(StandardCharsets.UTF_8)), options);
  }

  private static List<String> ids(FindingsReport report) {
    return report.findings().stream().map(Finding::ruleId).distinct().toList();
  }

  private static UnaryOperator<String> replacing(String old, String by) {
    return xml -> {
      assertTrue(xml.contains(old), old);
      return xml.replaceFirst(java.util.regex.Pattern.quote(old), by);
    };
  }

  static Stream<Arguments> departures() {
    String information = "<itl:PackageInformationRecord>";
    return Stream.of(
        Arguments.of("RP-XML-001", replacing("</nc:Date>", "</nc:Day>")),
        Arguments.of(
            "RP-XML-002", replacing("<itl:NIST", "<!DOCTYPE a [<!ENTITY b 'c'>]><itl:NIST")),
        Arguments.of("RP-XML-002", replacing("<nc:Date>", "<nc:Date>&b;")),
        Arguments.of("RP-XML-003", replacing("niem-core/2.0", "niem-core/0.1")),
        Arguments.of(
            "RP-XML-004", replacing("<itl:NISTBio[^>]*>".replace("[^>]*>", ""), "<itl:Some")),
        Arguments.of("RP-XML-005", replacing("<nc:Date>", "<nc:Month>May</nc:Month><nc:Date>")),
        Arguments.of(
            "RP-XML-006", replacing("<nc:BinaryBase64Object>", "<nc:BinaryBase64Object>*")),
        Arguments.of(
            "RP-XML-009",
            (UnaryOperator<String>)
                xml ->
                    xml.replaceFirst(
                        "(?s)(<ansi-nist:RecordCategoryCode>01</ansi-nist:RecordCategoryCode>)"
                            + "(.*?</ansi-nist:Transaction>)",
                        "$2$1")),
        Arguments.of(
            "RP-XML-010", replacing("<nc:Date>", "<nc:Date>2026-03-02</nc:Date><nc:Date>")),
        Arguments.of(
            "RP-XML-011", replacing(information, information + "<a:b xmlns:a='u' a:ref='x'/>")),
        Arguments.of(
            "RP-XML-012",
            (UnaryOperator<String>)
                xml ->
                    xml.replaceFirst(
                        "(?s)<itl:PackageInformationRecord>.*?</itl:PackageInformationRecord>",
                        "")),
        Arguments.of(
            "RP-XML-013",
            (UnaryOperator<String>)
                xml ->
                    xml.replaceFirst(
                        "(?s)(<itl:PackageInformationRecord>.*?</itl:PackageInformationRecord>)",
                        "$1$1")),
        Arguments.of("RP-XML-014", replacing("UTF-8", "EBCDIC-37")),
        Arguments.of(
            "RP-XML-016",
            replacing(
                "</itl:NIST", "<itl:PackageDNARecord><itl:Any/></itl:PackageDNARecord></itl:NIST")),
        Arguments.of(
            "RP-XML-017",
            replacing(
                "RecordCategoryCode>02</ansi-nist:RecordCategoryCode>\n    <",
                "RecordCategoryCode>13</ansi-nist:RecordCategoryCode>\n    <")));
  }

  @ParameterizedTest
  @MethodSource("departures")
  void eachDepartureIsFoundAndNotInTheSoundFile(String rule, UnaryOperator<String> change) {
    assertFalse(ids(examine(CARD, Optional.empty())).contains(rule));
    FindingsReport report = examine(change.apply(CARD), Optional.empty());
    assertTrue(ids(report).contains(rule), ids(report).toString());
    report.findings().stream()
        .filter(finding -> finding.ruleId().equals(rule))
        .filter(finding -> finding.location().bytes().isPresent())
        .forEach(finding -> assertTrue(finding.location().text().isPresent(), rule));
  }

  @Test
  void aSoundCardHasNoFindingInXmlEither() {
    assertEquals(List.of(), ids(examine(CARD, Optional.empty())));
  }

  @Test
  void aValueOfAnotherFormIsReportedWhereNoRuleOfItsFieldSaysIt() {
    String changed = CARD.replaceFirst("<nc:DateTime>[^<]*<", "<nc:DateTime>noon<");
    List<String> found = ids(examine(changed, Optional.empty()));
    // RP-XML-007 gives way to the rule of the field.
    assertFalse(found.isEmpty());
    assertFalse(found.contains("RP-XML-007"), found.toString());
  }

  @Test
  void aSchemaOfTheUserIsAskedToo() {
    FindingsReport report = examine(CARD, Optional.of(SampleXml.schemaOfOneRecord()));
    Finding first =
        report.findings().stream()
            .filter(finding -> finding.ruleId().equals("RP-XML-008"))
            .findFirst()
            .orElseThrow();
    assertEquals("an element that is not expected here", first.observed().text());
    assertEquals(2, first.location().record().orElseThrow());
  }
}
