package ridgeproof.report;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.facts.Depth;
import ridgeproof.report.data.JsonReport;
import ridgeproof.report.page.HtmlReport;
import ridgeproof.report.ticket.Ticket;
import ridgeproof.report.ticket.TicketRequest;

/** Each form of the report lists a cause once and says how much it explains. */
class CausesInReportsTest {

  private static final byte[] TRANSLATED = translated();
  private static final FindingsReport REPORT = Reports.examine(TRANSLATED, Depth.IMAGES);
  private static final int EXPLAINED = REPORT.findings().get(0).explains().orElseThrow();

  /** Every record of type 14 has a scale of units that no table lists. */
  private static final byte[] REPEATED =
      new String(example(), ISO_8859_1)
          .replace("14.008:1\u001D", "14.008:7\u001D")
          .getBytes(ISO_8859_1);

  private static byte[] example() {
    try {
      return Files.readAllBytes(Path.of("../docs/examples/clean-flats.an2"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static byte[] translated() {
    return new String(example(), ISO_8859_1).replace("\n", "\r\n").getBytes(ISO_8859_1);
  }

  private static JsonNode json(byte[] bytes, FindingsReport report, boolean every) {
    String json =
        JsonReport.render(
            Reports.facts(bytes), report, RenderOptions.standard().withEveryFinding(every));
    assertEquals(Set.of(), Reports.objections(json));
    return Reports.parse(json);
  }

  @Test
  void theCauseIsListedWithoutItsConsequences() {
    JsonNode findings = json(TRANSLATED, REPORT, false).get("findings");
    assertEquals(1, findings.size());
    assertEquals(EXPLAINED, findings.get(0).get("explains").asInt());
    assertFalse(findings.get(0).has("causedBy"));
  }

  @Test
  void onRequestEachConsequenceNamesItsCause() {
    JsonNode findings = json(TRANSLATED, REPORT, true).get("findings");
    assertEquals(EXPLAINED + 1, findings.size());
    int named = 0;
    for (JsonNode finding : findings) {
      named += finding.at("/causedBy/rule").asText().equals("RP-STR-030") ? 1 : 0;
    }
    assertEquals(EXPLAINED, named);
  }

  @Test
  void textPageAndTicketSayHowManyFindingsItExplains() {
    String words = "explains " + EXPLAINED + " further findings";
    String text = Reports.text(TRANSLATED, REPORT).replaceAll("\\s+", " ");
    String page =
        HtmlReport.render(Reports.facts(TRANSLATED), REPORT, RenderOptions.standard())
            .replaceAll("\\s+", " ");
    String ticket =
        Ticket.of(Reports.facts(TRANSLATED), REPORT, Renderings.TOOL, TicketRequest.standard())
            .asText()
            .replaceAll("\\s+", " ");
    assertTrue(text.contains(words), text);
    assertTrue(page.contains(words));
    assertTrue(ticket.contains(words), ticket);
    assertFalse(text.contains("RP-STR-004"), text);
  }

  @Test
  void aRepeatedFaultIsListedOnceWithItsPlaces() {
    FindingsReport report = Reports.examine(REPEATED, Depth.STRUCTURE);
    JsonNode once = only(json(REPEATED, report, false), "14.008");
    assertEquals(3, once.get("count").asInt());
    assertEquals(2, once.get("repeats").size());
    assertEquals(4, once.at("/repeats/0/location/record").asInt());
    assertEquals(5, once.at("/repeats/1/location/record").asInt());
    String text = Reports.text(REPEATED, report).replaceAll("\\s+", " ");
    assertTrue(text.contains("places 3: record 3 subfield 1"), text);
    assertEquals(3, count(json(REPEATED, report, true), "14.008"));
  }

  @Test
  void everyReportSaysWithWhichDayDatesWereCompared() {
    String day = REPORT.asOf().toString();
    assertEquals(day, json(TRANSLATED, REPORT, false).get("asOf").asText());
    assertTrue(Reports.text(TRANSLATED, REPORT).contains("Dates checked as of " + day));
  }

  private static JsonNode only(JsonNode report, String field) {
    JsonNode found = null;
    for (JsonNode finding : report.get("findings")) {
      if (finding.at("/location/field").asText().equals(field)) {
        assertTrue(found == null, "listed twice");
        found = finding;
      }
    }
    assertTrue(found != null, "not listed");
    return found;
  }

  private static int count(JsonNode report, String field) {
    int count = 0;
    for (JsonNode finding : report.get("findings")) {
      count += finding.at("/location/field").asText().equals(field) ? 1 : 0;
    }
    return count;
  }
}
