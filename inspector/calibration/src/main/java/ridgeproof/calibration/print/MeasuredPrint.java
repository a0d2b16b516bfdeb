package ridgeproof.calibration.print;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import ridgeproof.corpus.impression.CaptureDefect;
import ridgeproof.examination.facts.RidgeAnalysis.Impression;
import ridgeproof.ridges.quality.FingerAnalysis;
import ridgeproof.ridges.quality.QualityMetric;
import ridgeproof.spec.layout.FingerPosition;

/**
 * One finger in one image with what is true of it and what was measured.
 *
 * @param seed of the draw; 0 for a print that was not drawn
 * @param card number of the card in its draw, from 1
 * @param box position code of the image
 * @param defect what the capture of the image was spoilt by
 * @param strength of the defect, 0 to 1
 * @param values what could be measured; nothing where no print was found
 */
public record MeasuredPrint(
    long seed,
    int card,
    int box,
    FingerPosition finger,
    Impression kind,
    Optional<CaptureDefect> defect,
    double strength,
    Map<QualityMetric, Double> values) {

  public MeasuredPrint {
    Map<QualityMetric, Double> copy = new EnumMap<>(QualityMetric.class);
    copy.putAll(values);
    values = Collections.unmodifiableMap(copy);
  }

  public static Map<QualityMetric, Double> valuesOf(FingerAnalysis analysis) {
    Map<QualityMetric, Double> values = new EnumMap<>(QualityMetric.class);
    for (QualityMetric measure : QualityMetric.values()) {
      measure.of(analysis).ifPresent(value -> values.put(measure, value));
    }
    return values;
  }

  public boolean isClean() {
    return defect.isEmpty();
  }

  public boolean isFound() {
    return !values.isEmpty();
  }

  public OptionalDouble value(QualityMetric measure) {
    Double value = values.get(measure);
    return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
  }

  /** The same with one more value. */
  MeasuredPrint with(QualityMetric measure, double value) {
    Map<QualityMetric, Double> more = new EnumMap<>(QualityMetric.class);
    more.putAll(values);
    more.put(measure, value);
    return new MeasuredPrint(seed, card, box, finger, kind, defect, strength, more);
  }
}
