package ridgeproof.calibration.fit;

import java.util.Locale;
import java.util.OptionalDouble;
import ridgeproof.examination.facts.RidgeAnalysis.Impression;
import ridgeproof.ridges.quality.QualityMetric;
import ridgeproof.spec.limit.RidgeLimit;
import ridgeproof.spec.table.Source;

/**
 * One row of the table of limits.
 *
 * @param least below it the row is broken
 * @param most above it the row is broken
 * @param source how the limit is known
 */
record LimitRow(
    String rule,
    String caseName,
    Impression kind,
    QualityMetric measure,
    OptionalDouble least,
    OptionalDouble most,
    String source) {

  static LimitRow of(RidgeLimit row) {
    QualityMetric measure =
        QualityMetric.ofKey(row.measure())
            .orElseThrow(() -> new IllegalArgumentException("no measure " + row.measure()));
    if (!measure.unit().toString().equals(row.unit())) {
      throw new IllegalArgumentException(
          row.measure() + " is counted in " + measure.unit() + ", not in " + row.unit());
    }
    return new LimitRow(
        row.rule(),
        row.situation(),
        Impression.ofKey(row.impression()),
        measure,
        row.least(),
        row.most(),
        row.source().place());
  }

  static LimitRow of(
      LimitCriterion fitCase, LimitCriterion.Bound bound, double limit, String source) {
    return new LimitRow(
        fitCase.rule(),
        fitCase.name(),
        fitCase.kind(),
        bound.measure(),
        bound.below() ? OptionalDouble.of(limit) : OptionalDouble.empty(),
        bound.below() ? OptionalDouble.empty() : OptionalDouble.of(limit),
        source);
  }

  /** The row as an examination has it. */
  RidgeLimit limit() {
    return new RidgeLimit(
        rule,
        caseName,
        kind.key(),
        measure.key(),
        least,
        most,
        measure.unit().toString(),
        new Source("DESIGN", source, Source.Knowledge.COMMON_PRACTICE));
  }

  String group() {
    return rule + "/" + caseName + "/" + kind.key();
  }

  Object[] cells() {
    return new Object[] {
      rule, caseName, kind.key(), measure.key(), text(least), text(most), measure.unit(), source
    };
  }

  private static String text(OptionalDouble limit) {
    if (limit.isEmpty()) {
      return "";
    }
    String text = String.format(Locale.ROOT, "%.4f", limit.getAsDouble());
    return text.replaceAll("\\.?0+$", "");
  }
}
