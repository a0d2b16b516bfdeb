package ridgeproof.report.data;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.RidgeAnalysis;
import ridgeproof.examination.facts.RidgeAnalysis.Impression;
import ridgeproof.report.Reports;
import ridgeproof.report.prints.PrintScores;
import ridgeproof.ridges.quality.FingerAnalysis;
import ridgeproof.spec.layout.FingerPosition;

/** What a program reads of ridges. */
class RidgesJsonTest {

  private static JsonNode ridges(RidgeAnalysis facts, boolean showPersonal) throws IOException {
    FindingsReport report = MadeFindings.all();
    ExaminedImage slap = report.images().get(2);
    StringWriter text = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
      json.writeStartObject();
      new RidgesJson(json, showPersonal).write(slap, facts, new PrintScores(report));
      json.writeEndObject();
    }
    JsonNode whole = Reports.parse(text.toString());
    assertEquals(1, whole.size());
    return whole.get("ridges");
  }

  private static JsonNode sequence() throws IOException {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
      json.writeStartObject();
      new RidgesJson(json, false).writeSequence(MadeRidges.comparison());
      json.writeEndObject();
    }
    JsonNode whole = Reports.parse(text.toString());
    assertEquals(1, whole.size());
    return whole.get("sequence");
  }

  private static RidgeAnalysis one(FingerAnalysis finger) {
    return new RidgeAnalysis(
        Impression.ROLLED, Map.of(FingerPosition.LEFT_RING, finger), Optional.empty());
  }

  private static List<String> measures(FingerAnalysis finger) throws IOException {
    List<String> lines = new ArrayList<>();
    for (JsonNode measure : ridges(one(finger), false).at("/fingers/0/measures")) {
      assertEquals(3, measure.size());
      lines.add(
          measure.get("name").textValue()
              + " "
              + measure.get("value").doubleValue()
              + " "
              + measure.get("unit").textValue());
    }
    return lines;
  }

  private static final List<String> BEFORE_THE_SURROUND =
      List.of(
          "area 400.0 mm2",
          "ridge-area 380.5 mm2",
          "clear-share 0.951 share",
          "width 19.25 mm",
          "length 24.5 mm",
          "width-to-length 0.786 ratio",
          "cut-top 1.0 mm",
          "cut-right 2.5 mm",
          "cut-bottom 3.0 mm",
          "cut-left 4.75 mm",
          "certainty 0.906 share",
          "roughness 5.5 degrees",
          "ridge-period 0.46 mm",
          "period-spread 0.125 share",
          "dynamic-range 200.0 gray levels",
          "contrast 101.0 gray levels",
          "ridge-level 90.0 gray levels",
          "valley-level 220.0 gray levels");

  private static final List<String> SHARES_OF_TONE =
      List.of(
          "ridge-share 0.5 share",
          "dry-share 0.031 share",
          "dark-share 0.063 share",
          "closed-share 0.05 share",
          "faint-share 0.016 share");

  private static final List<String> FROM_CLARITY_TO_GAP =
      List.of(
          "clarity 0.8 share",
          "dominance 0.7 share",
          "unevenness 0.3 ratio",
          "edge-width 2.25 pixels",
          "blur 0.1 ratio",
          "grain 0.2 share",
          "smear-area 11.5 mm2",
          "smear-share 0.02 share",
          "gap-width 1.5 mm",
          "gap-share 0.04 share");

  private static final List<String> LAST =
      List.of(
          "minutiae 0.0 count",
          "reliable-minutiae 0.0 count",
          "minutia-density 0.0 per cm2",
          "score 71.0 points");

  private static List<String> joined(List<List<String>> parts) {
    return parts.stream().flatMap(List::stream).toList();
  }

  @Test
  void eachMeasureOfAPrintHasItsNameItsValueToAThousandthAndItsUnit() throws IOException {
    assertEquals(
        joined(
            List.of(
                BEFORE_THE_SURROUND,
                List.of("surround-level 250.5 gray levels"),
                SHARES_OF_TONE,
                List.of("modulation 0.813 share"),
                FROM_CLARITY_TO_GAP,
                List.of(
                    "cores 1.0 count",
                    "core-to-border 8.063 mm",
                    "rotation 13.5 degrees",
                    "rotation-confidence 0.95 share",
                    "pattern-confidence 0.613 share"),
                LAST)),
        measures(MadeRidges.finger()));
  }

  @Test
  void whatCannotBeMeasuredIsLeftOut() throws IOException {
    assertEquals(
        joined(
            List.of(
                BEFORE_THE_SURROUND,
                SHARES_OF_TONE,
                FROM_CLARITY_TO_GAP,
                List.of(
                    "cores 0.0 count",
                    "rotation 13.5 degrees",
                    "rotation-confidence 0.95 share",
                    "pattern-confidence 0.0 share"),
                LAST)),
        measures(MadeRidges.corelessWithoutSurround()));
  }

  /** The pattern tells of the person. */
  @Test
  void thePatternIsToldOnlyWherePersonalValuesAreShownAndAPrintIsThere() throws IOException {
    assertEquals(
        List.of("doubts", "measures", "position", "score"),
        names(ridges(MadeRidges.slap(), false).at("/fingers/0")));
    JsonNode shown = ridges(MadeRidges.slap(), true).get("fingers");
    assertEquals("tented-arch", shown.at("/0/pattern").textValue());
    assertEquals(List.of("doubts", "measures", "position", "score"), names(shown.get(1)));
  }

  @Test
  void anImageOfOneFingerSaysHowItWasCapturedAndWhatMakesItsFingerDoubtful() throws IOException {
    JsonNode ridges = ridges(one(MadeRidges.finger()), false);
    assertEquals("rolled", ridges.get("impression").textValue());
    assertEquals(List.of("fingers", "impression"), names(ridges));
    assertEquals(1, ridges.get("fingers").size());
    assertEquals(9, ridges.at("/fingers/0/position").intValue());
    assertEquals(
        Reports.parse("[\"cut-by-edge\",\"other-prints\"]"), ridges.at("/fingers/0/doubts"));
  }

  /** A number that is none cannot be written as one. */
  @Test
  void theScoreIsToldWithItsParts() throws IOException {
    assertEquals(
        Reports.parse(
            """
            {"value":71,"parts":[
              {"aspect":"ridge-distance","value":88,"weight":0.5,"measured":0.46},
              {"aspect":"core","value":60,"weight":1.25,"measured":0.0}]}
            """),
        ridges(one(MadeRidges.finger()), false).at("/fingers/0/score"));
  }

  @Test
  void aSlapSaysHowTheHandLeansAndWhereEachFingerLies() throws IOException {
    JsonNode ridges = ridges(MadeRidges.slap(), false);
    assertEquals("plain", ridges.get("impression").textValue());
    assertEquals(7.654, ridges.get("handDegrees").doubleValue());
    assertEquals(
        Reports.parse(
            """
            [{"position":2,"confidence":0.988,"doubts":[],
              "box":{"centreX":400.5,"centreY":700.25,"width":300.124,"height":450.0,
                     "degrees":-12.346}},
             {"position":3,"confidence":0.0,
              "doubts":["fewer-prints-than-fingers","place-ambiguous"]}]
            """),
        ridges.get("segments"));
    assertEquals(
        Reports.parse(
            """
            {"position":3,"doubts":["no-ridges"],"score":{"value":0,"parts":[]},"measures":[]}
            """),
        ridges.at("/fingers/1"));
  }

  @Test
  void theComparisonOfPrintsHasAnAnswerForEachFingerAndWhatIsOutOfOrder() throws IOException {
    assertEquals(
        Reports.parse(
            """
            {"threshold":36.5,
             "answers":[
              {"position":2,"answer":"contradicted","reason":"matches-another-roll",
               "similarity":3.142,"mostAlikeOtherRoll":7,"similarityWithOther":77.778,
               "odds":12.346},
              {"position":3,"answer":"inconclusive","reason":"no-roll","similarity":0.0,
               "odds":0.0}],
             "irregularities":[
              {"kind":"hands-exchanged","positions":[2,7],"mutual":true,"similarity":40.124,
               "odds":9.877},
              {"kind":"rolled-twice","positions":[10],"mutual":false,"similarity":50.0,
               "odds":0.0}]}
            """),
        sequence());
  }

  private static List<String> names(JsonNode object) {
    List<String> names = new ArrayList<>();
    object.fieldNames().forEachRemaining(names::add);
    names.sort(String::compareTo);
    return names;
  }
}
