package ridgeproof.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.Examiner;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.report.data.JsonReport;
import ridgeproof.report.text.TextReport;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.agency.AgencyProfileReader;
import ridgeproof.spec.agency.ProfileReading;
import ridgeproof.transaction.reader.ParseLimits;
import ridgeproof.transaction.record.ByteSource;

class RelaxedRulesTest {

  private static final SpecTables TABLES = SpecTables.open();
  private static final FileFacts FILE = new FileFacts("pilot.an2", 0, "0".repeat(64));

  private static FindingsReport examine(String body) {
    ProfileReading reading =
        AgencyProfileReader.read(
            "name = \"tidewater\"\ntitle = \"Tidewater Harbour Pilots\"\n" + body, TABLES);
    byte[] file =
        "1.001:40\u001d1.002:0500\u001d1.003:1\u001f0\u001d1.004:FAUF\u001c"
            .getBytes(StandardCharsets.US_ASCII);
    return new Examiner(TABLES, ParseLimits.standard())
        .examine(
            ByteSource.of(file),
            ExaminationOptions.standard()
                .withDepth(Depth.IMAGES)
                .withAgency(((ProfileReading.Usable) reading).profile()));
  }

  /** On one line, since the report breaks lines where the page ends. */
  private static String text(FindingsReport report) {
    return TextReport.render(FILE, report, RenderOptions.standard()).replaceAll("\\s+", " ");
  }

  private static final String RELAXING = "[severities]\nRP-IMG-016 = \"NOTE\"\n";

  @Test
  void theTextReportListsRelaxedRulesAndNamesTheProfile() {
    String text = text(examine(RELAXING));
    assertTrue(text.contains("Checked as: Tidewater Harbour Pilots"), text);
    assertTrue(text.contains("Relaxed by the profile, compared with the published rules"), text);
    assertTrue(text.contains("RP-IMG-016"), text);
    assertTrue(text.contains("NOTE, published LIKELY"), text);
  }

  @Test
  void theTextReportIsSilentWhereNothingIsRelaxed() {
    String text = text(examine(""));
    assertTrue(!text.contains("Relaxed"), text);
  }

  @Test
  void theJsonReportListsRelaxedRulesAndNamesTheProfile() throws IOException {
    JsonNode json =
        new ObjectMapper()
            .readTree(JsonReport.render(FILE, examine(RELAXING), RenderOptions.standard()));
    assertEquals("tidewater", json.at("/transaction/profile/name").textValue());
    assertEquals(1, json.at("/relaxedRules").size());
    assertEquals("RP-IMG-016", json.at("/relaxedRules/0/rule").textValue());
    assertEquals("LIKELY", json.at("/relaxedRules/0/published").textValue());
    assertEquals("NOTE", json.at("/relaxedRules/0/now").textValue());
  }

  @Test
  void theJsonReportHasAnEmptyListWhereNothingIsRelaxed() throws IOException {
    JsonNode json =
        new ObjectMapper().readTree(JsonReport.render(FILE, examine(""), RenderOptions.standard()));
    assertTrue(json.at("/relaxedRules").isArray() && json.at("/relaxedRules").isEmpty());
  }
}
