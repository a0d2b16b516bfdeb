package ridgeproof.report.picture;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import ridgeproof.examination.facts.RidgeFacts;
import ridgeproof.report.Wording;
import ridgeproof.ridges.quality.FingerAnalysis;
import ridgeproof.ridges.quality.RidgeMeasure;
import ridgeproof.spec.layout.FingerPosition;
import ridgeproof.spec.limit.RidgeLimit;

/**
 * The measures of one print beside their limits.
 *
 * @param title the finger and its score
 */
public record PrintMeasures(String title, List<Bar> bars) {

  /**
   * One measure.
   *
   * @param value with its unit
   * @param limit what it is held against, in words
   * @param share of the bar that is filled, 0 to 1
   * @param mark where on the bar the limit is, 0 to 1
   * @param broken whether the value is beyond the limit
   */
  public record Bar(
      String name, String value, String limit, double share, double mark, boolean broken) {

    /** For a drawing that is 100 wide. */
    public static String hundredths(double share) {
      return String.format(Locale.ROOT, "%.1f", 100 * share);
    }
  }

  /** Twice the limit is the end of a bar. */
  private static final double LIMIT_AT = 0.5;

  public static List<PrintMeasures> of(RidgeFacts facts, List<RidgeLimit> limits, Wording wording) {
    Map<RidgeMeasure, RidgeLimit> held = new LinkedHashMap<>();
    for (RidgeLimit limit : limits) {
      if (limit.impression().equals(facts.impression().key())) {
        RidgeMeasure.ofKey(limit.measure()).ifPresent(measure -> held.putIfAbsent(measure, limit));
      }
    }
    List<PrintMeasures> prints = new ArrayList<>();
    for (Map.Entry<FingerPosition, FingerAnalysis> finger : facts.fingers().entrySet()) {
      List<Bar> bars = new ArrayList<>();
      held.forEach(
          (measure, limit) -> {
            OptionalDouble value = measure.of(finger.getValue());
            if (value.isPresent()) {
              bars.add(bar(measure, limit, value.getAsDouble()));
            }
          });
      String name = facts.slap().isPresent() ? wording.position(finger.getKey().code()) + ", " : "";
      prints.add(
          new PrintMeasures(
              name + "score " + finger.getValue().score().value() + " of 100", List.copyOf(bars)));
    }
    return prints;
  }

  private static Bar bar(RidgeMeasure measure, RidgeLimit limit, double value) {
    boolean atLeast = limit.least().isPresent();
    double bound = limit.least().orElseGet(() -> limit.most().orElse(0));
    double share = bound <= 0 ? 0 : Math.max(0, Math.min(1, value / bound * LIMIT_AT));
    return new Bar(
        measure.title(),
        limit.amount(value),
        (atLeast ? "at least " : "at most ") + limit.amount(bound),
        share,
        LIMIT_AT,
        limit.isBrokenBy(value));
  }
}
