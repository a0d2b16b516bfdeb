package ridgeproof.report.data;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ridgeproof.examination.FindingsReport;
import ridgeproof.finding.Finding;
import ridgeproof.report.FileFacts;
import ridgeproof.report.RenderOptions;
import ridgeproof.report.Renderings;
import ridgeproof.report.Reports;
import ridgeproof.spec.rule.Severity;

/** Everything that a log of SARIF says, value by value. */
class SarifReportTest {

  private static final FileFacts SECOND = new FileFacts("zweite_Ä.an2", 42, "d".repeat(64));

  /** Remembers whether it was closed. */
  private static final class Sink extends StringWriter {

    private boolean closed;

    @Override
    public void close() {
      closed = true;
    }
  }

  private static SarifReport log(StringWriter out, RenderOptions options) throws IOException {
    return new SarifReport(Reports.TABLES, Renderings.TOOL, out, options);
  }

  private static JsonNode results(FindingsReport report, RenderOptions options) throws IOException {
    StringWriter out = new StringWriter();
    SarifReport log = log(out, options);
    log.add(MadeFindings.FILE, report);
    log.end();
    return Reports.parse(out.toString()).at("/runs/0/results");
  }

  /** The second file has a finding of a rule that the first has, which its profile made graver. */
  @Test
  void aLogHasEachFindingWithItsRuleItsFileAndItsPlace() throws IOException {
    Finding graver = MadeFindings.poor().withSeverity(Severity.BLOCKING);
    StringWriter out = new StringWriter();
    SarifReport log = log(out, RenderOptions.standard());
    log.add(MadeFindings.FILE, MadeFindings.all());
    log.add(SECOND, MadeFindings.with(graver));
    log.end();
    assertEquals(JsonReportTest.expected("whole.sarif.json"), out.toString());
  }

  @Test
  void resultsAreWrittenAsFilesAreAddedAndTheTargetIsLeftOpen() throws IOException {
    Sink out = new Sink();
    SarifReport log = log(out, RenderOptions.standard());
    log.add(MadeFindings.FILE, MadeFindings.with(MadeFindings.missing()));
    assertTrue(out.toString().contains("\"ruleId\" : \"RP-TXN-004\""), out.toString());
    assertFalse(out.toString().contains("artifacts"));
    log.end();
    assertTrue(out.toString().endsWith("\n}"), out.toString());
    assertFalse(out.closed);
  }

  @Test
  void ofNoFileThereIsNoLog() throws IOException {
    StringWriter out = new StringWriter();
    log(out, RenderOptions.standard()).end();
    assertEquals("", out.toString());
  }

  @Test
  void onRequestEachPlaceAndEachConsequenceIsAResult() throws IOException {
    List<String> rules = new ArrayList<>();
    results(MadeFindings.all(), RenderOptions.standard().withEveryFinding(true))
        .forEach(result -> rules.add(result.get("ruleId").textValue()));
    assertEquals(
        List.of("RP-TXN-004", "RP-STR-015", "RP-FLD-005", "RP-FLD-005", "RP-RDG-017", "RP-COD-001"),
        rules);
  }

  @Test
  void aValueThatTellsOfAPersonIsToldWhereAskedFor() throws IOException {
    FindingsReport report = MadeFindings.with(MadeFindings.repeated(1));
    assertEquals(
        "Invalid character: found X1, required letters, \"-\". Re-enter the field.",
        results(report, new RenderOptions(true, false, 80)).at("/0/message/text").textValue());
  }

  @ParameterizedTest
  @CsvSource({"BLOCKING, error", "LIKELY, warning", "ADVICE, note", "NOTE, note"})
  void eachSeverityHasItsLevel(Severity severity, String level) throws IOException {
    FindingsReport report = MadeFindings.with(MadeFindings.missing().withSeverity(severity));
    assertEquals(level, results(report, RenderOptions.standard()).at("/0/level").textValue());
  }

  /** RFC 3986, 2.3: what needs no escape; RFC 3986, 2.5: others by their bytes in UTF-8. */
  @ParameterizedTest
  @CsvSource({
    "azAZ09-._~.an2, azAZ09-._~.an2",
    "a b/c\\d:e?f#g%h, a%20b%2Fc%5Cd%3Ae%3Ff%23g%25h",
    "Ä€𝄞, %C3%84%E2%82%AC%F0%9D%84%9E",
    "\u007f, %7F"
  })
  void aFileNameIsARelativeReference(String name, String uri) {
    assertEquals(uri, SarifReport.uri(name));
  }
}
