package ridgeproof.calibration.statistics;

import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import ridgeproof.calibration.print.Distribution;
import ridgeproof.calibration.print.Markdown;
import ridgeproof.examination.facts.RidgeAnalysis.Impression;
import ridgeproof.spec.layout.FingerPosition;

/** Ridge period and minutiae. */
final class RidgeSection {

  static final Predicate<FingerPosition> ALL = finger -> true;

  /** 500 ppi. */
  private static final double PIXELS_PER_MM = 500 / 25.4;

  private final CardStatistics drawn;
  private final CardStatistics real;
  private final Markdown text;

  RidgeSection(CardStatistics drawn, CardStatistics real, Markdown text) {
    this.drawn = drawn;
    this.real = real;
    this.text = text;
  }

  void write() {
    period();
    minutiae();
  }

  private void period() {
    text.heading("Ridge period");
    text.line(
        "Distance from ridge to ridge, mean and standard deviation over the prints, in mm; in");
    text.line(
        "brackets the mean in pixels at 500 ppi. \"Grown\" is the mean that the finger was grown");
    text.line("with, the others are medians over a print as the ridges code measures them.");
    text.line("");
    text.head("finger", "grown", "rolled", "plain", "real card, rolled", "real card, plain");
    for (FingerPosition finger : FingerPosition.values()) {
      periodRow(Markdown.words(finger), finger::equals);
    }
    periodRow("**all**", ALL);
  }

  private void periodRow(String name, Predicate<FingerPosition> these) {
    text.row(
        name,
        mm(drawn.known(Impression.ROLLED, these, ObservedPrint.Truth::periodMm)),
        mm(drawn.seen(Impression.ROLLED, these, ObservedPrint.Sight::periodMm)),
        mm(drawn.seen(Impression.PLAIN, these, ObservedPrint.Sight::periodMm)),
        mm(real.seen(Impression.ROLLED, these, ObservedPrint.Sight::periodMm)),
        mm(real.seen(Impression.PLAIN, these, ObservedPrint.Sight::periodMm)));
  }

  private static String mm(Distribution periods) {
    if (periods.isEmpty()) {
      return "";
    }
    String spread = periods.count() < 2 ? "" : Markdown.format(" ± %.3f", periods.deviation());
    return Markdown.format("%.3f%s (%.2f)", periods.mean(), spread, periods.mean() * PIXELS_PER_MM);
  }

  private void minutiae() {
    text.heading("Minutiae");
    text.line(
        "\"Grown\" are those that the skin in the print truly has, on the area that truly shows");
    text.line(
        "ridges; \"seen\" are those of SourceAFIS on the area that the ridges code finds. It keeps");
    text.line(
        "the 100 most clustered; for images of one finger (rolls and plain thumbs) it was asked");
    text.line("for those before that, for the four-finger images a print at 100 may have more.");
    text.line("");
    text.head(
        "prints",
        "number",
        "minutiae, mean",
        "5 %",
        "median",
        "95 %",
        "in mm2, mean",
        "5 %",
        "95 %",
        "endings, percent",
        "at 100, percent");
    for (Impression kind : Impression.values()) {
      known(kind);
      seen("drawn, seen", drawn, kind);
      seen("real card, seen", real, kind);
    }
  }

  private void known(Impression kind) {
    ToDoubleFunction<ObservedPrint.Truth> endings = t -> t.minutiae().endings();
    row(
        kind.key() + ": drawn, grown",
        drawn.known(kind, ALL, t -> t.minutiae().total()),
        drawn.known(kind, ALL, t -> t.minutiae().density()),
        drawn.known(kind, ALL, endings),
        "");
  }

  private void seen(String name, CardStatistics survey, Impression kind) {
    Distribution counts = survey.seen(kind, ALL, s -> s.minutiae().total());
    row(
        kind.key() + ": " + name,
        counts,
        survey.seen(kind, ALL, s -> s.minutiae().density()),
        survey.seen(kind, ALL, s -> s.minutiae().endings()),
        Markdown.format("%.1f", 100 * survey.seen(kind, ALL, s -> s.capped() ? 1 : 0).mean()));
  }

  private void row(
      String name, Distribution counts, Distribution densities, Distribution endings, String cap) {
    if (counts.isEmpty()) {
      return;
    }
    text.row(
        name,
        counts.count(),
        Markdown.format("%.1f", counts.mean()),
        Markdown.format("%.0f", counts.quantile(0.05)),
        Markdown.format("%.0f", counts.quantile(0.5)),
        Markdown.format("%.0f", counts.quantile(0.95)),
        Markdown.format("%.3f", densities.mean()),
        Markdown.format("%.3f", densities.quantile(0.05)),
        Markdown.format("%.3f", densities.quantile(0.95)),
        PatternSection.percent(endings.mean(), counts.mean()),
        cap);
  }
}
