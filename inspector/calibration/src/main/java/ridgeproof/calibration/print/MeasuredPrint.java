package ridgeproof.calibration.print;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import ridgeproof.corpus.impression.CaptureDefect;
import ridgeproof.examination.facts.RidgeFacts.Impression;
import ridgeproof.ridges.quality.FingerAnalysis;
import ridgeproof.ridges.quality.RidgeMeasure;
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
    Map<RidgeMeasure, Double> values) {

  public MeasuredPrint {
    Map<RidgeMeasure, Double> copy = new EnumMap<>(RidgeMeasure.class);
    copy.putAll(values);
    values = Collections.unmodifiableMap(copy);
  }

  public static Map<RidgeMeasure, Double> valuesOf(FingerAnalysis analysis) {
    Map<RidgeMeasure, Double> values = new EnumMap<>(RidgeMeasure.class);
    for (RidgeMeasure measure : RidgeMeasure.values()) {
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

  public OptionalDouble value(RidgeMeasure measure) {
    Double value = values.get(measure);
    return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
  }

  /** The same with one more value. */
  MeasuredPrint with(RidgeMeasure measure, double value) {
    Map<RidgeMeasure, Double> more = new EnumMap<>(RidgeMeasure.class);
    more.putAll(values);
    more.put(measure, value);
    return new MeasuredPrint(seed, card, box, finger, kind, defect, strength, more);
  }
}
