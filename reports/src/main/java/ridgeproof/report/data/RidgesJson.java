package ridgeproof.report.data;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.RidgeAnalysis;
import ridgeproof.report.prints.PrintScores;
import ridgeproof.ridges.map.RotatedBox;
import ridgeproof.ridges.matching.FingerMatchResult;
import ridgeproof.ridges.matching.SequenceError;
import ridgeproof.ridges.matching.SequenceResult;
import ridgeproof.ridges.pattern.PatternMeasure;
import ridgeproof.ridges.quality.FingerAnalysis;
import ridgeproof.ridges.quality.QualityMetric;
import ridgeproof.ridges.quality.QualityScore;
import ridgeproof.ridges.segmentation.Segment;
import ridgeproof.spec.layout.FingerPosition;

/**
 * Writes what was seen of ridges. Minutiae are counted and never listed, since a list of them is a
 * template of the finger.
 */
final class RidgesJson {

  private static final double THOUSANDTHS = 1000;

  private final JsonGenerator json;
  private final boolean showPersonal;

  RidgesJson(JsonGenerator json, boolean showPersonal) {
    this.json = json;
    this.showPersonal = showPersonal;
  }

  void write(ExaminedImage image, RidgeAnalysis facts, PrintScores scores) throws IOException {
    json.writeObjectFieldStart("ridges");
    json.writeStringField("impression", facts.impression().key());
    json.writeArrayFieldStart("fingers");
    for (Map.Entry<FingerPosition, FingerAnalysis> finger : facts.fingers().entrySet()) {
      int score = scores.of(image, finger.getKey(), finger.getValue());
      write(finger.getKey(), finger.getValue(), score);
    }
    json.writeEndArray();
    if (facts.slap().isPresent()) {
      json.writeNumberField("handDegrees", rounded(facts.slap().get().degrees()));
      json.writeArrayFieldStart("segments");
      for (Segment segment : facts.slap().get().segments()) {
        write(segment);
      }
      json.writeEndArray();
    }
    json.writeEndObject();
  }

  private void write(FingerPosition finger, FingerAnalysis analysis, int score) throws IOException {
    json.writeStartObject();
    json.writeNumberField("position", finger.code());
    writeNames("doubts", analysis.doubts());
    json.writeObjectFieldStart("score");
    json.writeNumberField("value", score);
    json.writeArrayFieldStart("parts");
    for (QualityScore.Part part : analysis.score().parts()) {
      json.writeStartObject();
      json.writeStringField("aspect", name(part.aspect()));
      json.writeNumberField("value", part.value());
      json.writeNumberField("weight", part.weight());
      json.writeNumberField("measured", rounded(part.measured()));
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
    json.writeArrayFieldStart("measures");
    for (QualityMetric measure : QualityMetric.values()) {
      OptionalDouble value = measure.of(analysis);
      if (value.isPresent()) {
        json.writeStartObject();
        json.writeStringField("name", measure.key());
        json.writeNumberField("value", rounded(value.getAsDouble()));
        json.writeStringField("unit", measure.unit().toString());
        json.writeEndObject();
      }
    }
    json.writeEndArray();
    if (showPersonal && analysis.measures().isPresent()) {
      PatternMeasure pattern = analysis.measures().get().pattern();
      json.writeStringField("pattern", name(pattern.pattern()));
    }
    json.writeEndObject();
  }

  private void write(Segment segment) throws IOException {
    json.writeStartObject();
    json.writeNumberField("position", segment.position().code());
    json.writeNumberField("confidence", rounded(segment.confidence()));
    writeNames("doubts", segment.doubts());
    Optional<RotatedBox> box = segment.box();
    if (box.isPresent()) {
      json.writeObjectFieldStart("box");
      json.writeNumberField("centreX", rounded(box.get().centreX()));
      json.writeNumberField("centreY", rounded(box.get().centreY()));
      json.writeNumberField("width", rounded(box.get().width()));
      json.writeNumberField("height", rounded(box.get().height()));
      json.writeNumberField("degrees", rounded(box.get().degrees()));
      json.writeEndObject();
    }
    json.writeEndObject();
  }

  void writeSequence(SequenceResult sequence) throws IOException {
    json.writeObjectFieldStart("sequence");
    json.writeNumberField("threshold", rounded(sequence.threshold()));
    json.writeArrayFieldStart("answers");
    for (FingerMatchResult answer : sequence.answers()) {
      json.writeStartObject();
      json.writeNumberField("position", answer.position().code());
      json.writeStringField("answer", name(answer.verdict()));
      json.writeStringField("reason", name(answer.reason()));
      json.writeNumberField("similarity", rounded(answer.ownScore()));
      if (answer.other().isPresent()) {
        json.writeNumberField("mostAlikeOtherRoll", answer.other().get().code());
        json.writeNumberField("similarityWithOther", rounded(answer.otherScore()));
      }
      json.writeNumberField("odds", rounded(answer.odds()));
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeArrayFieldStart("irregularities");
    for (SequenceError irregularity : sequence.irregularities()) {
      json.writeStartObject();
      json.writeStringField("kind", name(irregularity.kind()));
      json.writeArrayFieldStart("positions");
      for (FingerPosition finger : irregularity.positions()) {
        json.writeNumber(finger.code());
      }
      json.writeEndArray();
      json.writeBooleanField("mutual", irregularity.mutual());
      json.writeNumberField("similarity", rounded(irregularity.score()));
      json.writeNumberField("odds", rounded(irregularity.odds()));
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void writeNames(String field, Iterable<? extends Enum<?>> names) throws IOException {
    json.writeArrayFieldStart(field);
    for (Enum<?> value : names) {
      json.writeString(name(value));
    }
    json.writeEndArray();
  }

  private static String name(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private static double rounded(double value) {
    return Double.isFinite(value) ? Math.round(value * THOUSANDTHS) / THOUSANDTHS : 0;
  }
}
