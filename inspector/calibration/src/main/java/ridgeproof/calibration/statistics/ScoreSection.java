package ridgeproof.calibration.statistics;

import java.util.ArrayList;
import java.util.List;
import ridgeproof.calibration.print.Distribution;
import ridgeproof.calibration.print.Markdown;
import ridgeproof.calibration.statistics.SimilarityScores.Relation;

/** How alike plain prints and rolls are to the matcher. */
final class ScoreSection {

  private static final double[] QUANTILES = {0, 0.01, 0.05, 0.25, 0.5, 0.75, 0.95, 0.99, 1};

  /** Bounds of the bars: each twice the one before, with the usual limit of 40 among them. */
  private static final double[] BOUNDS = {
    0, 5, 10, 20, 40, 80, 160, 320, 640, 1280, Double.POSITIVE_INFINITY
  };

  private static final int FULL_BAR = 50;

  private record Row(String name, Distribution scores) {}

  private final double limit;
  private final Markdown text;
  private final List<Row> rows = new ArrayList<>();

  /**
   * @param limit similarity from which on two prints are called one finger
   */
  ScoreSection(CardStatistics drawn, CardStatistics real, double limit, Markdown text) {
    this.limit = limit;
    this.text = text;
    for (Relation relation : Relation.values()) {
      add(relation.toString(), drawn.scores(relation));
    }
    for (Relation relation : Relation.values()) {
      add("real card: " + relation, real.scores(relation));
    }
  }

  private void add(String name, Distribution scores) {
    if (!scores.isEmpty()) {
      rows.add(new Row(name, scores));
    }
  }

  void write() {
    text.heading("Matching scores");
    text.line("Similarity that SourceAFIS gives a plain print with a roll. From %.0f on", limit);
    text.line("(`pixel-measures.csv`, `finger-match`) two prints are called one finger.");
    text.line("");
    text.head(
        "roll is of",
        "pairs",
        "least",
        "1 %",
        "5 %",
        "25 %",
        "median",
        "75 %",
        "95 %",
        "99 %",
        "most",
        "below the limit, percent",
        "at the limit or above, percent");
    rows.forEach(this::quantiles);
    rows.forEach(this::histogram);
  }

  private void quantiles(Row row) {
    List<Object> cells = new ArrayList<>(List.of(row.name(), row.scores().count()));
    for (double share : QUANTILES) {
      cells.add(Markdown.format("%.1f", row.scores().quantile(share)));
    }
    double matched = row.scores().shareFrom(limit);
    cells.add(Markdown.format("%.2f", 100 * (1 - matched)));
    cells.add(Markdown.format("%.2f", 100 * matched));
    text.row(cells.toArray());
  }

  private void histogram(Row row) {
    text.line("");
    text.line("```text");
    text.line("%s, %d pairs", row.name(), row.scores().count());
    for (int i = 0; i + 1 < BOUNDS.length && row.scores().shareFrom(BOUNDS[i]) > 0; i++) {
      long count = row.scores().countWithin(BOUNDS[i], BOUNDS[i + 1]);
      double share = (double) count / row.scores().count();
      // A pair too rare for a bar still shows.
      String bar = "#".repeat((int) Math.max(count > 0 ? 1 : 0, Math.rint(share * FULL_BAR)));
      String range =
          i + 2 < BOUNDS.length
              ? Markdown.format("%4.0f to %4.0f", BOUNDS[i], BOUNDS[i + 1])
              : Markdown.format("%4.0f and up ", BOUNDS[i]);
      text.line(
          "%s",
          Markdown.format("%s %6d %5.1f %% %s", range, count, 100 * share, bar).stripTrailing());
    }
    text.line("```");
  }
}
