package ridgeproof.calibration.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import ridgeproof.calibration.fit.LimitCriterion;
import ridgeproof.corpus.impression.CaptureDefect;
import ridgeproof.examination.facts.RidgeAnalysis.Impression;
import ridgeproof.ridges.quality.QualityMetric;
import ridgeproof.spec.layout.FingerPosition;

/** Measured prints made up for tests. */
public final class MadeUpPrints {

  private MadeUpPrints() {}

  public static MeasuredPrint clean(int card, Map<QualityMetric, Double> values) {
    return new MeasuredPrint(
        1, card, 2, FingerPosition.RIGHT_INDEX, Impression.ROLLED, Optional.empty(), 0, values);
  }

  public static MeasuredPrint spoilt(
      int card, CaptureDefect defect, double strength, Map<QualityMetric, Double> values) {
    return new MeasuredPrint(
        1,
        card,
        2,
        FingerPosition.RIGHT_INDEX,
        Impression.ROLLED,
        Optional.of(defect),
        strength,
        values);
  }

  /** Clean prints with a clarity of 0.7 to 0.8, dry ones with 0.4 to 0.5. */
  public static List<MeasuredPrint> dryAndClean(long seed) {
    Random random = new Random(seed);
    List<MeasuredPrint> prints = new ArrayList<>();
    for (int card = 1; card <= 400; card++) {
      double chance = random.nextDouble() / 10;
      prints.add(clean(card, Map.of(QualityMetric.CLARITY, 0.7 + chance)));
      prints.add(
          spoilt(
              card,
              CaptureDefect.TOO_DRY,
              0.6 + 0.4 * random.nextDouble(),
              Map.of(QualityMetric.CLARITY, 0.4 + chance)));
    }
    return prints;
  }

  public static List<LimitCriterion> dryPlan() {
    return LimitCriterion.plan().stream()
        .filter(c -> c.name().equals("dry") && c.kind() == Impression.ROLLED)
        .toList();
  }
}
