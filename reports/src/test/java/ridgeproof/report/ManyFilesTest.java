package ridgeproof.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.StringWriter;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.facts.Depth;
import ridgeproof.report.data.FindingsCsv;
import ridgeproof.report.data.SarifReport;

/** The forms that hold the findings of several files. */
class ManyFilesTest {

  private static final byte[] SOUND = PilotCard.ascii().bytes();
  private static final byte[] INCOMPLETE = PilotCard.ascii().without(4).without(7).bytes();

  private static FileFacts facts(String name, byte[] bytes) {
    return new FileFacts(name, bytes.length, "a".repeat(64));
  }

  private static FindingsReport examine(byte[] bytes) {
    return Reports.examine(bytes, Depth.IMAGES);
  }

  private static JsonNode sarif() throws IOException {
    StringWriter text = new StringWriter();
    SarifReport sarif =
        new SarifReport(Reports.TABLES, Renderings.TOOL, text, RenderOptions.standard());
    sarif.add(facts("sound.an2", SOUND), examine(SOUND));
    sarif.add(facts("in complete.an2", INCOMPLETE), examine(INCOMPLETE));
    sarif.end();
    return Reports.parse(text.toString());
  }

  @Test
  void aSheetHasARowForEachFindingAndOneForAFileWithout() throws IOException {
    StringWriter sheet = new StringWriter();
    FindingsCsv csv = new FindingsCsv(sheet, RenderOptions.standard());
    csv.add(facts("sound.an2", SOUND), examine(SOUND));
    csv.add(facts("incomplete.an2", INCOMPLETE), examine(INCOMPLETE));
    List<String> lines = sheet.toString().lines().toList();
    int rows =
        Math.max(1, examine(SOUND).findings().size()) + examine(INCOMPLETE).findings().size();
    assertEquals(1 + rows, lines.size(), sheet.toString());
    assertTrue(lines.get(0).startsWith("file,sha256,verdict,rule,severity"), lines.get(0));
    assertTrue(
        sheet
            .toString()
            .contains("incomplete.an2," + "a".repeat(64) + ",HOLD,RP-TXN-004,BLOCKING"));
  }

  /** By the structure of SARIF 2.1.0, sections 3.13 to 3.52, checked by hand. */
  @Test
  void aLogHasTheStructureOfSarif() throws IOException {
    JsonNode log = sarif();
    assertEquals("2.1.0", log.get("version").asText());
    assertEquals(1, log.get("runs").size());
    JsonNode run = log.at("/runs/0");
    assertEquals("Ridgeproof", run.at("/tool/driver/name").asText());
    JsonNode rules = run.at("/tool/driver/rules");
    assertTrue(rules.size() > 0);
    for (JsonNode rule : rules) {
      for (String message : List.of("shortDescription", "fullDescription", "help")) {
        assertFalse(rule.at("/" + message + "/text").asText().isBlank(), rule.toString());
      }
      assertTrue(isLevel(rule.at("/defaultConfiguration/level")), rule.toString());
    }
    assertEquals("a".repeat(64), run.at("/artifacts/1/hashes/sha-256").asText());
    assertEquals("in%20complete.an2", run.at("/artifacts/1/location/uri").asText());
    assertFalse(run.get("results").isEmpty());
    for (JsonNode result : run.get("results")) {
      int rule = result.get("ruleIndex").asInt();
      assertEquals(rules.get(rule).get("id"), result.get("ruleId"));
      assertTrue(isLevel(result.get("level")), result.toString());
      assertFalse(result.at("/message/text").asText().isBlank(), result.toString());
      JsonNode place = result.at("/locations/0/physicalLocation");
      int artifact = place.at("/artifactLocation/index").asInt();
      assertEquals(
          run.at("/artifacts/" + artifact + "/location/uri"), place.at("/artifactLocation/uri"));
      if (place.has("region")) {
        assertTrue(place.at("/region/byteOffset").asInt() >= 0);
        assertTrue(place.at("/region/byteLength").asInt() >= 0);
      }
    }
  }

  @Test
  void aLogHasEveryFinding() throws IOException {
    assertEquals(
        examine(SOUND).findings().size() + examine(INCOMPLETE).findings().size(),
        sarif().at("/runs/0/results").size());
  }

  private static boolean isLevel(JsonNode level) {
    return Set.of("none", "note", "warning", "error").contains(level.asText());
  }
}
