package ridgeproof.report.picture;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.RidgeAnalysis;
import ridgeproof.finding.Finding;
import ridgeproof.report.ReportPhrases;
import ridgeproof.report.prints.PrintScores;
import ridgeproof.ridges.quality.FingerAnalysis;
import ridgeproof.ridges.quality.QualityMetric;
import ridgeproof.spec.layout.FingerPosition;
import ridgeproof.spec.limit.RidgeLimit;
import ridgeproof.spec.rule.Severity;

/**
 * The measures of one print beside their limits. A measure is called beyond its limit only where a
 * finding says so: most limits count only together with others.
 *
 * @param title the finger and its score
 */
public record PrintMeasures(String title, List<Bar> bars) {

  /**
   * One measure.
   *
   * @param value with its unit
   * @param limit what it is compared with, in words
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

  /** The measures of every print of an image. */
  public static List<PrintMeasures> of(
      ExaminedImage image, FindingsReport report, PrintScores scores, ReportPhrases wording) {
    if (image.ridges().isEmpty()) {
      return List.of();
    }
    RidgeAnalysis facts = image.ridges().get();
    List<PrintMeasures> prints = new ArrayList<>();
    for (Map.Entry<FingerPosition, FingerAnalysis> finger : facts.fingers().entrySet()) {
      Map<QualityMetric, RidgeLimit> shown =
          shown(facts, finger.getValue(), broken(image, finger.getKey(), facts, report), report);
      List<Bar> bars = new ArrayList<>();
      shown.forEach(
          (measure, limit) ->
              measure
                  .of(finger.getValue())
                  .ifPresent(value -> bars.add(bar(measure, limit, value))));
      String name = facts.slap().isPresent() ? wording.position(finger.getKey().code()) + ", " : "";
      int score = scores.of(image, finger.getKey(), finger.getValue());
      prints.add(new PrintMeasures(name + "score " + score + " of 100", List.copyOf(bars)));
    }
    return prints;
  }

  /** The rules that ask for a recapture of this print. */
  private static Set<String> broken(
      ExaminedImage image, FingerPosition finger, RidgeAnalysis facts, FindingsReport report) {
    return report.everyFinding().stream()
        .filter(finding -> finding.severity().worseThan(Severity.ADVICE))
        .filter(finding -> finding.location().record().orElse(0) == image.record().ordinal())
        .filter(finding -> isAbout(finding, finger, facts))
        .map(Finding::ruleId)
        .collect(Collectors.toSet());
  }

  private static boolean isAbout(Finding finding, FingerPosition finger, RidgeAnalysis facts) {
    return facts.slap().isEmpty()
        || finding.location().position().orElse(0) == finger.code()
        || FingerPosition.ofCode(finding.location().position().orElse(0)).isEmpty();
  }

  /** One limit for each measure: one that a finding is about, else one that the print keeps to. */
  private static Map<QualityMetric, RidgeLimit> shown(
      RidgeAnalysis facts, FingerAnalysis print, Set<String> broken, FindingsReport report) {
    List<RidgeLimit> own =
        report.tables().ridgeLimits().stream()
            .filter(limit -> limit.impression().equals(facts.impression().key()))
            .toList();
    Map<QualityMetric, RidgeLimit> shown = new LinkedHashMap<>();
    Stream.of(true, false)
        .forEach(
            beyond ->
                own.stream()
                    .filter(limit -> beyond ? broken.contains(limit.rule()) : true)
                    .filter(limit -> isBeyond(limit, print) == beyond)
                    .forEach(
                        limit ->
                            QualityMetric.ofKey(limit.measure())
                                .ifPresent(measure -> shown.putIfAbsent(measure, limit))));
    return shown;
  }

  private static boolean isBeyond(RidgeLimit limit, FingerAnalysis print) {
    OptionalDouble value =
        QualityMetric.ofKey(limit.measure())
            .map(measure -> measure.of(print))
            .orElse(OptionalDouble.empty());
    return value.isPresent() && limit.isBrokenBy(value.getAsDouble());
  }

  private static Bar bar(QualityMetric measure, RidgeLimit limit, double value) {
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
