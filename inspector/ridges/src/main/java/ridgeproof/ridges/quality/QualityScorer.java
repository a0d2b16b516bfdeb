package ridgeproof.ridges.quality;

import java.util.ArrayList;
import java.util.List;
import ridgeproof.ridges.map.Statistics;
import ridgeproof.ridges.quality.QualityScore.Aspect;

/**
 * Makes the score of a print from its measures; few parts, each of which a person sees, weighted so
 * that the score ranks prints as they match other impressions (see
 * `docs/evaluation/real-prints.md`).
 */
final class QualityScorer {

  private static final double PERCENT = 100;

  /** A part that is worth nothing still leaves the others to be told apart. */
  private static final double FLOOR = 0.02;

  /** Logarithms of one more than the minutiae that leave nothing and all to be wished. */
  private static final double LOG_FEW = Math.log(3);

  private static final double LOG_MANY = Math.log(55);

  private final List<QualityScore.Part> parts = new ArrayList<>();

  private QualityScorer() {}

  static QualityScore of(FingerMeasures m) {
    QualityScorer card = new QualityScorer();
    int minutiae = m.minutiae().reliable();
    card.add(
        Aspect.MINUTIAE, 1, minutiae, Statistics.ramp(Math.log1p(minutiae), LOG_FEW, LOG_MANY));
    double share = m.tone().ridgeShare();
    card.add(
        Aspect.MOISTURE,
        0.3,
        share,
        Math.min(Statistics.ramp(share, 0.67, 0.38), Statistics.ramp(share, 0.2, 0.33)));
    double area = m.extent().ridgeAreaMm2();
    card.add(Aspect.RIDGE_AREA, 0.1, area, Statistics.ramp(area, 20, 120));
    double clarity = m.clarity().clarity();
    card.add(Aspect.CLARITY, 0.2, clarity, Statistics.ramp(clarity, 0.1, 0.6));
    double period = m.flow().periodMm();
    card.add(Aspect.RIDGE_DISTANCE, 1.1, period, Statistics.ramp(period, 0.7, 0.44));
    double border = m.pattern().coreToBorderMm();
    card.add(
        Aspect.CORE,
        0.4,
        border,
        m.pattern().core().isEmpty() ? 0.45 : 0.45 + 0.55 * Statistics.ramp(border, 0, 5));
    double polarity =
        switch (m.tone().polarity()) {
          case DARK_RIDGES -> 1;
          case UNKNOWN -> 0.8;
          case LIGHT_RIDGES -> 0;
        };
    card.add(Aspect.POLARITY, 0.5, polarity, polarity);
    return card.sum();
  }

  private void add(Aspect aspect, double weight, double measured, double worth) {
    parts.add(new QualityScore.Part(aspect, (int) Math.round(PERCENT * worth), weight, measured));
  }

  private QualityScore sum() {
    double weights = parts.stream().mapToDouble(QualityScore.Part::weight).sum();
    double logarithm = 0;
    for (QualityScore.Part part : parts) {
      logarithm += part.weight() * Math.log(Math.max(FLOOR, part.value() / PERCENT));
    }
    return new QualityScore((int) Math.round(PERCENT * Math.exp(logarithm / weights)), parts);
  }
}
