package ridgeproof.calibration.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import org.apache.commons.csv.CSVRecord;
import ridgeproof.calibration.print.Csv;
import ridgeproof.calibration.print.MeasuredPrint;
import ridgeproof.corpus.impression.CaptureDefect;
import ridgeproof.examination.facts.RidgeAnalysis.Impression;
import ridgeproof.ridges.quality.QualityMetric;

/**
 * One case of a rule whose limits are to be found.
 *
 * @param defects what it is to catch; none for a case whose limits are all given
 * @param bounds the measures that must all be beyond their limits
 */
public record LimitCriterion(
    String rule, String name, Impression kind, Set<CaptureDefect> defects, List<Bound> bounds) {

  private static final String RESOURCE = "/ridgeproof/calibration/fit-plan.csv";

  /**
   * One measure of a case.
   *
   * @param below whether values below the limit are bad, or else those above
   * @param given a limit that is not fitted
   * @param source where a given limit is from
   */
  record Bound(QualityMetric measure, boolean below, OptionalDouble given, String source) {

    boolean isBroken(MeasuredPrint print, double limit) {
      OptionalDouble value = print.value(measure);
      return value.isPresent()
          && (below ? value.getAsDouble() < limit : value.getAsDouble() > limit);
    }
  }

  public LimitCriterion {
    defects = Set.copyOf(defects);
    bounds = List.copyOf(bounds);
  }

  /** What this module sets out to fit: which measures tell which defect is our own choice. */
  public static List<LimitCriterion> plan() {
    Map<String, LimitCriterion> cases = new LinkedHashMap<>();
    for (CSVRecord row : Csv.resource(RESOURCE)) {
      for (String kind : row.get("impression").split(" ")) {
        LimitCriterion one = of(row, Impression.ofKey(kind));
        cases.merge(one.rule + "/" + one.name + "/" + kind, one, LimitCriterion::with);
      }
    }
    return List.copyOf(cases.values());
  }

  private static LimitCriterion of(CSVRecord row, Impression kind) {
    String key = row.get("measure");
    QualityMetric measure =
        QualityMetric.ofKey(key)
            .orElseThrow(() -> new IllegalArgumentException("no measure " + key));
    String given = row.get("given");
    Bound bound =
        new Bound(
            measure,
            row.get("bad").equals("below"),
            given.isBlank() ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(given)),
            row.get("source"));
    Set<CaptureDefect> defects = EnumSet.noneOf(CaptureDefect.class);
    Arrays.stream(row.get("defects").split(" "))
        .filter(word -> !word.isBlank())
        .forEach(word -> defects.add(CaptureDefect.valueOf(word.toUpperCase(Locale.ROOT))));
    return new LimitCriterion(row.get("rule"), row.get("case"), kind, defects, List.of(bound));
  }

  private LimitCriterion with(LimitCriterion other) {
    List<Bound> more = new ArrayList<>(bounds);
    more.addAll(other.bounds);
    return new LimitCriterion(rule, name, kind, defects, more);
  }
}
