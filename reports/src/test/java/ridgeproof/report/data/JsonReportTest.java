package ridgeproof.report.data;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.facts.Depth;
import ridgeproof.finding.Finding;
import ridgeproof.report.PilotCard;
import ridgeproof.report.RenderOptions;
import ridgeproof.report.Reports;

/** Everything that a program reads of a file, value by value. */
class JsonReportTest {

  private static final RenderOptions SHOWING = new RenderOptions(true, false, 80);

  static String expected(String name) throws IOException {
    try (InputStream in = JsonReportTest.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).stripTrailing();
    }
  }

  private static JsonNode json(FindingsReport report, RenderOptions options) {
    String json = JsonReport.render(MadeFindings.FILE, report, options);
    assertEquals(Set.of(), Reports.objections(JsonReport.SCHEMA, json));
    return Reports.parse(json);
  }

  private static JsonNode json(FindingsReport report) {
    return json(report, RenderOptions.standard());
  }

  private static List<String> texts(JsonNode array, String pointer) {
    List<String> texts = new ArrayList<>();
    array.forEach(each -> texts.add(each.at(pointer).asText()));
    return texts;
  }

  /** Which measures are listed {@link RidgesJsonTest} states. */
  @Test
  void aProgramReadsEachThingOnce() throws IOException {
    String json =
        JsonReport.render(MadeFindings.FILE, MadeFindings.all(), RenderOptions.standard());
    assertEquals(
        expected("whole.json"),
        json.replaceAll("(?s)\"measures\" : \\[ \\{.*?} ]", "\"measures\" : [ ... ]"));
    assertEquals(Set.of(), Reports.objections(JsonReport.SCHEMA, json));
  }

  @Test
  void ofAnUnreadableFileItIsSaidThatItIsOneAndNothingOfATransaction() {
    JsonNode json = json(Reports.examine(new byte[100], Depth.STRUCTURE));
    assertEquals("UNREADABLE", json.get("verdict").textValue());
    assertEquals("structure", json.get("depth").textValue());
    assertEquals(Reports.parse("{}"), json.get("transaction"));
    assertEquals(Reports.parse("[]"), json.get("records"));
    assertFalse(json.has("sequence"));
  }

  @Test
  void aVersionThatIsReadAsStatedIsNotToldTwice() {
    JsonNode json = json(Reports.examine(PilotCard.ascii().bytes(), Depth.STRUCTURE));
    assertEquals("0500", json.at("/transaction/version").textValue());
    assertFalse(json.get("transaction").has("statedVersion"));
  }

  @Test
  void aFileThatStatesNoVersionHasNoStatedOne() {
    JsonNode json = json(Reports.examine(PilotCard.ascii().header(2, "").bytes(), Depth.STRUCTURE));
    assertEquals("0502", json.at("/transaction/version").textValue());
    assertFalse(json.get("transaction").has("statedVersion"));
  }

  @Test
  void whyCompletenessWasNotCheckedByTypeIsTold() {
    JsonNode json =
        json(Reports.examine(PilotCard.ascii().header(4, "PILOT").bytes(), Depth.STRUCTURE));
    assertEquals(
        Reports.parse(
            """
            {"checkedByType":false,
             "why":"the type of transaction is not in any published list"}
            """),
        json.at("/transaction/completeness"));
  }

  @Test
  void aProfileThatTheUserNamedIsNotImplied() {
    byte[] card = PilotCard.ascii().bytes();
    String profile = Reports.TABLES.profiles().get(0).name();
    JsonNode json = json(Reports.examineAs(profile, card));
    assertEquals("images", json.get("depth").textValue());
    assertEquals(profile, json.at("/transaction/profile/name").textValue());
    assertFalse(json.at("/transaction/profile/implied").booleanValue());
    assertFalse(json(MadeFindings.with()).get("transaction").has("profile"));
  }

  @Test
  void onRequestEachPlaceAndEachConsequenceIsListed() {
    JsonNode findings =
        json(MadeFindings.all(), RenderOptions.standard().withEveryFinding(true)).get("findings");
    assertEquals(
        List.of("RP-TXN-004", "RP-STR-015", "RP-FLD-005", "RP-FLD-005", "RP-RDG-017", "RP-COD-001"),
        texts(findings, "/rule"));
    assertEquals(
        Reports.parse("{\"rule\":\"RP-TXN-004\",\"location\":{}}"), findings.at("/1/causedBy"));
    assertEquals(List.of("false", "true"), texts(findings, "/observed/masked").subList(1, 3));
    for (int i = 0; i < findings.size(); i++) {
      assertEquals(i == 1, findings.get(i).has("causedBy"));
      assertFalse(findings.get(i).has("count") || findings.get(i).has("repeats"));
    }
  }

  @Test
  void ofAFaultInManyPlacesTheFirstElevenAreNamedAndAllAreCounted() {
    JsonNode finding = json(MadeFindings.with(MadeFindings.repeated(12))).at("/findings/0");
    assertEquals(12, finding.get("count").intValue());
    assertEquals(1, finding.at("/location/item").intValue());
    assertEquals(
        IntStream.rangeClosed(2, 11).mapToObj(Integer::toString).toList(),
        texts(finding.get("repeats"), "/location/item"));
  }

  @Test
  void aFaultInOnePlaceHasNoRepeats() {
    Finding once = MadeFindings.repeated(1);
    JsonNode finding = json(MadeFindings.with(once)).at("/findings/0");
    assertFalse(finding.has("count") || finding.has("repeats") || finding.has("explains"));
  }

  @Test
  void aValueThatTellsOfAPersonIsToldWhereAskedFor() {
    JsonNode json = json(MadeFindings.with(MadeFindings.personal()), SHOWING);
    assertEquals(true, json.get("personalValuesShown").booleanValue());
    assertEquals(
        Reports.parse("{\"masked\":false,\"text\":\"SPECIMEN,ADA\"}"),
        json.at("/findings/0/observed"));
    assertEquals(
        Reports.parse("{\"masked\":false,\"text\":\"SPECIMEN,EVE\"}"),
        json.at("/findings/0/repeats/0/observed"));
  }
}
