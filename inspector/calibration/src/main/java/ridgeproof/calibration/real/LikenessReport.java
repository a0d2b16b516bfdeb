package ridgeproof.calibration.real;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import ridgeproof.calibration.print.Csv;
import ridgeproof.calibration.print.Distribution;
import ridgeproof.calibration.print.Markdown;
import ridgeproof.ridges.quality.FingerAnalysis;
import ridgeproof.ridges.quality.QualityMetric;

/** Measure by measure, how far drawn prints lie from sound real ones. */
public final class LikenessReport {

  private static final double SOUND = 100;
  private static final double GOAL = 0.3;
  private static final String REASONS = "/ridgeproof/calibration/likeness-reasons.csv";

  private final List<RealSet> sets;
  private final List<List<FingerAnalysis>> real;
  private final List<FingerAnalysis> smooth;
  private final List<FingerAnalysis> aged;
  private final Markdown text = new Markdown();

  /**
   * @param smooth drawn prints of smooth skin, carefully taken
   * @param aged drawn prints of skin by age
   */
  public LikenessReport(
      List<RealSet> sets, List<FingerAnalysis> smooth, List<FingerAnalysis> aged) {
    this.sets = List.copyOf(sets);
    this.real = sets.stream().map(LikenessReport::sound).toList();
    this.smooth = found(smooth);
    this.aged = found(aged);
  }

  private static List<FingerAnalysis> sound(RealSet set) {
    return IntStream.range(0, set.prints().size())
        .filter(i -> set.median(i) >= SOUND)
        .mapToObj(i -> set.prints().get(i).analysis())
        .toList();
  }

  private static List<FingerAnalysis> found(List<FingerAnalysis> prints) {
    return prints.stream().filter(print -> print.measures().isPresent()).toList();
  }

  public String write(String command) {
    List<FingerAnalysis> all = real.stream().flatMap(List::stream).toList();
    text.line("# How like synthetic prints are to real ones")
        .line("")
        .line("Single plain prints, measure by measure. Made by")
        .line("")
        .line("    " + command)
        .line("");
    text.line(
        "Real: %d sound prints (median similarity of at least %.0f with the other impressions of the"
            + " finger) of %d sets. Drawn: %d prints of smooth skin, carefully taken, and %d of skin by"
            + " age, taken as a small sensor takes them; none has a defect. The ranges of"
            + " the draw by age were set with these very real prints in view.",
        all.size(), SOUND, sets.size(), smooth.size(), aged.size());
    text.line("")
        .line(
            "The distance is that of Kolmogorov and Smirnov between two samples, 0 to 1; the goal is"
                + " %.1f or less. The last but one column is the distance between the two real sets:"
                + " where two sensors lie that far apart, no draw is near both.",
            GOAL)
        .line("")
        .head("measure", "real, median", "by age, median", "smooth", "by age", "real sets", "goal");
    List<QualityMetric> missed = new ArrayList<>();
    int measured = 0;
    for (QualityMetric measure : QualityMetric.values()) {
      Distribution truth = of(measure, all);
      Distribution drawn = of(measure, aged);
      if (!truth.isEmpty() && !drawn.isEmpty()) {
        measured++;
        if (!row(measure, truth, drawn)) {
          missed.add(measure);
        }
      }
    }
    text.line("")
        .line("%d of %d measures reach the goal.", measured - missed.size(), measured)
        .line("");
    reasons(missed);
    return text.toString();
  }

  private boolean row(QualityMetric measure, Distribution truth, Distribution drawn) {
    double distance = truth.distance(drawn);
    String between =
        real.size() < 2
            ? ""
            : Markdown.format("%.2f", of(measure, real.get(0)).distance(of(measure, real.get(1))));
    boolean met = distance <= GOAL;
    text.row(
        measure.key(),
        Markdown.format("%.3g", truth.quantile(0.5)),
        Markdown.format("%.3g", drawn.quantile(0.5)),
        Markdown.format("%.2f", truth.distance(of(measure, smooth))),
        Markdown.format("%.2f", distance),
        between,
        met ? "met" : "missed");
    return met;
  }

  private static Distribution of(QualityMetric measure, List<FingerAnalysis> prints) {
    return Distribution.of(
        prints.stream().map(measure::of).flatMapToDouble(value -> value.stream()));
  }

  private void reasons(List<QualityMetric> missed) {
    Map<QualityMetric, String> known = new EnumMap<>(QualityMetric.class);
    Csv.resource(REASONS)
        .forEach(
            row ->
                Arrays.stream(row.get("measures").split(" "))
                    .flatMap(key -> QualityMetric.ofKey(key).stream())
                    .forEach(measure -> known.put(measure, row.get("reason"))));
    if (!missed.isEmpty()) {
      text.line("Where it is missed, and why as far as it is known:").line("");
      missed.forEach(
          measure ->
              text.line("- %s: %s", measure.key(), known.getOrDefault(measure, "not known yet")));
    }
  }
}
