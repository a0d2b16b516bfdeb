package ridgeproof.examination.rules.ridges;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import ridgeproof.examination.SampleCard;
import ridgeproof.examination.facts.RidgeAnalysis.Impression;
import ridgeproof.ridges.quality.QualityMetric;
import ridgeproof.spec.limit.RidgeLimit;

class RidgeLimitEvaluatorTest {

  private static final List<RidgeLimit> LIMITS = SampleCard.TABLES.ridgeLimits();
  private static final RidgeLimitEvaluator JUDGE = new RidgeLimitEvaluator(LIMITS);

  /** Rules that hold measures against limits, besides those that a table cannot tell. */
  private static final List<String> MEASURED =
      List.of(
          "RP-RDG-002",
          "RP-RDG-003",
          "RP-RDG-004",
          "RP-RDG-005",
          "RP-RDG-006",
          "RP-RDG-007",
          "RP-RDG-008",
          "RP-RDG-009",
          "RP-RDG-010",
          "RP-RDG-011",
          "RP-RDG-012",
          "RP-RDG-013",
          "RP-RDG-014",
          "RP-RDG-015",
          "RP-RDG-017");

  @Test
  void everyRuleOfLimitsHasALimitAndEveryLimitARule() {
    assertEquals(MEASURED, LIMITS.stream().map(RidgeLimit::rule).distinct().sorted().toList());
  }

  @Test
  void everyLimitIsOfAMeasureThatExistsInItsUnit() {
    for (RidgeLimit limit : LIMITS) {
      QualityMetric measure = QualityMetric.ofKey(limit.measure()).orElseThrow();
      assertEquals(measure.unit().toString(), limit.unit(), limit::toString);
      assertTrue(limit.least().isPresent() || limit.most().isPresent(), limit::toString);
    }
  }

  @TestFactory
  Stream<DynamicTest> aPrintBeyondAllLimitsOfASituationIsTold() {
    return LIMITS.stream()
        .collect(
            Collectors.groupingBy(
                limit -> limit.rule() + ", " + limit.situation() + ", " + limit.impression()))
        .entrySet()
        .stream()
        .map(
            situation ->
                DynamicTest.dynamicTest(
                    situation.getKey(), () -> toldBeyondAndNotWithin(situation.getValue())));
  }

  private static void toldBeyondAndNotWithin(List<RidgeLimit> limits) {
    String rule = limits.get(0).rule();
    Impression impression =
        limits.get(0).impression().equals("rolled") ? Impression.ROLLED : Impression.PLAIN;
    Map<QualityMetric, Double> beyond = new EnumMap<>(QualityMetric.class);
    Map<QualityMetric, Double> within = new EnumMap<>(QualityMetric.class);
    for (RidgeLimit limit : limits) {
      QualityMetric measure = QualityMetric.ofKey(limit.measure()).orElseThrow();
      double bound = limit.least().orElseGet(() -> limit.most().orElseThrow());
      beyond.put(measure, limit.least().isPresent() ? bound - 1e-6 : bound + 1e-6);
      within.put(measure, bound);
    }
    assertTrue(faults(impression, beyond).containsKey(rule));
    assertFalse(
        faults(impression, within).getOrDefault(rule, List.of()).stream()
            .anyMatch(broken -> limits.contains(broken.limit())));
  }

  private static Map<String, List<RidgeLimitEvaluator.Broken>> faults(
      Impression impression, Map<QualityMetric, Double> values) {
    return JUDGE.faults(
        impression,
        measure ->
            values.containsKey(measure)
                ? OptionalDouble.of(values.get(measure))
                : OptionalDouble.empty());
  }

  @Test
  void whatCannotBeMeasuredIsHeldAgainstNobody() {
    for (Impression impression : Impression.values()) {
      assertEquals(Map.of(), JUDGE.faults(impression, measure -> OptionalDouble.empty()));
    }
  }
}
