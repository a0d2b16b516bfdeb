package ridgeproof.examination.rules.ridges;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;
import ridgeproof.examination.facts.RidgeAnalysis.Impression;
import ridgeproof.ridges.quality.QualityMetric;
import ridgeproof.spec.limit.RidgeLimit;

/** Holds the measures of a print against the limits of ridges. */
public final class RidgeLimitEvaluator {

  /**
   * A limit that a print breaks.
   *
   * @param value what was measured, in the unit of the limit
   */
  public record Broken(RidgeLimit limit, QualityMetric measure, double value) {

    /** The bound on the side that the value is beyond. */
    public double bound() {
      return limit.least().isPresent() && value < limit.least().getAsDouble()
          ? limit.least().getAsDouble()
          : limit.most().getAsDouble();
    }
  }

  private record Situation(String rule, String name) {}

  private final Map<Situation, List<RidgeLimit>> rolled;
  private final Map<Situation, List<RidgeLimit>> plain;

  public RidgeLimitEvaluator(List<RidgeLimit> limits) {
    rolled = situations(limits, Impression.ROLLED);
    plain = situations(limits, Impression.PLAIN);
  }

  private static Map<Situation, List<RidgeLimit>> situations(
      List<RidgeLimit> limits, Impression impression) {
    Map<Situation, List<RidgeLimit>> situations = new LinkedHashMap<>();
    for (RidgeLimit limit : limits) {
      if (limit.impression().equals(impression.key())) {
        situations
            .computeIfAbsent(
                new Situation(limit.rule(), limit.situation()), key -> new ArrayList<>())
            .add(limit);
      }
    }
    return situations;
  }

  /**
   * The limits that a print breaks, by rule: those of the first situation that applies in full.
   *
   * @param measured the value of a measure, where it can be told
   */
  public Map<String, List<Broken>> faults(
      Impression impression, Function<QualityMetric, OptionalDouble> measured) {
    Map<String, List<Broken>> faults = new LinkedHashMap<>();
    (impression == Impression.ROLLED ? rolled : plain)
        .forEach(
            (situation, limits) -> {
              List<Broken> broken = new ArrayList<>();
              for (RidgeLimit limit : limits) {
                QualityMetric measure = QualityMetric.ofKey(limit.measure()).orElseThrow();
                measured.apply(measure).stream()
                    .filter(limit::isBrokenBy)
                    .forEach(value -> broken.add(new Broken(limit, measure, value)));
              }
              if (broken.size() == limits.size()) {
                faults.putIfAbsent(situation.rule(), List.copyOf(broken));
              }
            });
    return faults;
  }
}
