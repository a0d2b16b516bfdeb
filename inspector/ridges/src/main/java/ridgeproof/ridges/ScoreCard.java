package ridgeproof.ridges;

import java.util.ArrayList;
import java.util.List;
import ridgeproof.ridges.Score.Aspect;

/** Makes the score of a print from its measures; the ramps are ours, set on scanned ink cards. */
final class ScoreCard {

  private static final double PERCENT = 100;

  /** A part that is worth nothing still leaves the others to be told apart. */
  private static final double FLOOR = 0.02;

  private final List<Score.Part> parts = new ArrayList<>();

  private ScoreCard() {}

  static Score of(FingerMeasures m) {
    ScoreCard card = new ScoreCard();
    double area = m.extent().ridgeAreaMm2();
    double share = m.extent().areaMm2() <= 0 ? 0 : Math.min(1, area / m.extent().areaMm2());
    card.add(Aspect.RIDGE_AREA, 0.16, area, Statistics.ramp(area, 20, 220));
    card.add(Aspect.RIDGE_SHARE, 0.10, share, Statistics.ramp(share, 0.3, 0.9));
    card.add(
        Aspect.CERTAINTY,
        0.10,
        m.flow().certainty(),
        Statistics.ramp(m.flow().certainty(), 0.2, 0.7));
    card.add(
        Aspect.CLARITY,
        0.14,
        m.clarity().clarity(),
        Statistics.ramp(m.clarity().clarity(), 0.1, 0.7));
    card.add(
        Aspect.DOMINANCE,
        0.08,
        m.clarity().dominance(),
        Statistics.ramp(m.clarity().dominance(), 0.15, 0.4));
    card.add(
        Aspect.UNIFORMITY,
        0.06,
        m.clarity().unevenness(),
        Statistics.ramp(m.clarity().unevenness(), 1.2, 0.3));
    card.add(
        Aspect.CONTRAST, 0.06, m.tone().contrast(), Statistics.ramp(m.tone().contrast(), 8, 45));
    double off = Math.abs(m.tone().ridgeShare() - 0.5);
    card.add(Aspect.INKING, 0.05, off, Statistics.ramp(off, 0.25, 0.08));
    card.add(Aspect.SMEAR, 0.04, m.smear().share(), Statistics.ramp(m.smear().share(), 0.4, 0.05));
    int minutiae = m.minutiae().count();
    card.add(Aspect.MINUTIAE, 0.12, minutiae, Statistics.ramp(minutiae, 6, 36));
    double border = m.pattern().coreToBorderMm();
    card.add(
        Aspect.CORE,
        0.05,
        border,
        m.pattern().core().isEmpty() ? 0.3 : 0.3 + 0.7 * Statistics.ramp(border, 0, 5));
    EdgeContact edges = m.extent().edges();
    double cut =
        Math.max(
            Math.max(edges.topMm(), edges.bottomMm()), Math.max(edges.leftMm(), edges.rightMm()));
    card.add(Aspect.CUT, 0.04, cut, Statistics.ramp(cut, 16, 1));
    double polarity =
        switch (m.tone().polarity()) {
          case DARK_RIDGES -> 1;
          case UNKNOWN -> 0.8;
          case LIGHT_RIDGES -> 0;
        };
    card.add(Aspect.POLARITY, 0.20, polarity, polarity);
    return card.sum();
  }

  private void add(Aspect aspect, double weight, double measured, double worth) {
    parts.add(new Score.Part(aspect, (int) Math.round(PERCENT * worth), weight, measured));
  }

  private Score sum() {
    double weights = parts.stream().mapToDouble(Score.Part::weight).sum();
    double logarithm = 0;
    for (Score.Part part : parts) {
      logarithm += part.weight() * Math.log(Math.max(FLOOR, part.value() / PERCENT));
    }
    return new Score((int) Math.round(PERCENT * Math.exp(logarithm / weights)), parts);
  }
}
