package ridgeproof.calibration.statistics;

import static ridgeproof.calibration.statistics.RidgeSection.ALL;

import java.util.List;
import java.util.function.ToDoubleFunction;
import ridgeproof.calibration.print.Distribution;
import ridgeproof.calibration.print.ManualAssessments;
import ridgeproof.calibration.print.Markdown;
import ridgeproof.calibration.statistics.SimilarityScores.Relation;
import ridgeproof.examination.facts.RidgeAnalysis.Impression;

/** How natural drawn prints are, as Markdown; without dates, so that one draw says the same. */
public final class StatisticsReport {

  /** The middle of the drawn cards that a real one is looked for in. */
  private static final double TAIL = 0.05;

  /** A number that one card has. */
  private record CardStatistic(String name, String form, ToDoubleFunction<CardStatistics> of) {}

  private static final List<CardStatistic> OF_A_CARD =
      List.of(
          new CardStatistic(
              "ridge period of the rolls, mm", "%.3f", s -> mean(s, Impression.ROLLED)),
          new CardStatistic(
              "ridge period of the plain prints, mm", "%.3f", s -> mean(s, Impression.PLAIN)),
          new CardStatistic(
              "minutiae of a roll",
              "%.1f",
              s -> s.seen(Impression.ROLLED, ALL, p -> p.minutiae().total()).mean()),
          new CardStatistic(
              "minutiae of a plain print",
              "%.1f",
              s -> s.seen(Impression.PLAIN, ALL, p -> p.minutiae().total()).mean()),
          new CardStatistic(
              "minutiae per square millimeter of a rolled print",
              "%.3f",
              s -> s.seen(Impression.ROLLED, ALL, p -> p.minutiae().density()).mean()),
          new CardStatistic(
              "minutiae per square millimeter of a plain print",
              "%.3f",
              s -> s.seen(Impression.PLAIN, ALL, p -> p.minutiae().density()).mean()),
          new CardStatistic(
              "endings of the minutiae of rolls, percent",
              "%.1f",
              s ->
                  100
                      * s.seen(Impression.ROLLED, ALL, p -> p.minutiae().endings()).mean()
                      / s.seen(Impression.ROLLED, ALL, p -> p.minutiae().total()).mean()),
          new CardStatistic(
              "area of a roll, mm2",
              "%.0f",
              s -> s.seen(Impression.ROLLED, ALL, p -> p.minutiae().areaMm2()).mean()),
          new CardStatistic(
              "area of a plain print, mm2",
              "%.0f",
              s -> s.seen(Impression.PLAIN, ALL, p -> p.minutiae().areaMm2()).mean()),
          new CardStatistic(
              "median similarity, same finger",
              "%.0f",
              s -> s.scores(Relation.SAME_FINGER).quantile(0.5)),
          new CardStatistic(
              "least similarity, same finger",
              "%.0f",
              s -> s.scores(Relation.SAME_FINGER).quantile(0)),
          new CardStatistic(
              "greatest similarity, other fingers",
              "%.1f",
              s -> s.scores(Relation.SAME_SUBJECT).quantile(1)));

  private final CardStatistics drawn;
  private final CardStatistics real;
  private final double limit;
  private final Markdown text = new Markdown();

  /**
   * @param real the card of a real person; no cards where there is none
   * @param limit similarity from which on two prints are called one finger
   */
  public StatisticsReport(CardStatistics drawn, CardStatistics real, double limit) {
    this.drawn = drawn;
    this.real = real;
    this.limit = limit;
  }

  private static double mean(CardStatistics survey, Impression kind) {
    return survey.seen(kind, ALL, ObservedPrint.Sight::periodMm).mean();
  }

  /**
   * The whole text.
   *
   * @param command that makes it
   */
  public String write(String command) {
    text.line("# How natural the synthetic prints are");
    text.line("");
    text.line(
        "Rolled cards without defects, drawn by the corpus, stored as WSQ and read back, and");
    text.line("examined by the ridges code of this project. Made by");
    text.line("");
    text.line("    " + command);
    text.line("");
    text.line(
        "%d cards: %d rolls and %d plain prints, of which %d and %d were found.",
        drawn.cards().size(),
        drawn.prints(Impression.ROLLED).size(),
        drawn.prints(Impression.PLAIN).size(),
        drawn.seen(Impression.ROLLED, ALL, s -> 1).count(),
        drawn.seen(Impression.PLAIN, ALL, s -> 1).count());
    if (!real.cards().isEmpty()) {
      text.line("Beside them, as numbers, the public ten-print card `%s`", ManualAssessments.CARD);
      text.line("of one real person, ink on paper, by the same code.");
    }
    new PatternSection(drawn, real, text).write();
    new RidgeSection(drawn, real, text).write();
    new ScoreSection(drawn, real, limit, text).write();
    PublishedSection published = new PublishedSection(drawn, real, limit, text);
    published.write();
    if (!real.cards().isEmpty()) {
      besideTheRealCard();
    }
    differences(published.differences());
    return text.toString();
  }

  private void besideTheRealCard() {
    text.heading("Beside the real card");
    text.line(
        "Means over the prints of one card. The real card is ordinary where it lies among the");
    text.line("middle nine tenths of the drawn ones.");
    text.line("");
    text.head("of one card", "drawn, 5 %", "drawn, median", "drawn, 95 %", "real card", "ordinary");
    for (CardStatistic statistic : OF_A_CARD) {
      Distribution cards = cards(statistic);
      double value = statistic.of().applyAsDouble(real);
      text.row(
          statistic.name(),
          Markdown.format(statistic.form(), cards.quantile(TAIL)),
          Markdown.format(statistic.form(), cards.quantile(0.5)),
          Markdown.format(statistic.form(), cards.quantile(1 - TAIL)),
          Markdown.format(statistic.form(), value),
          isOrdinary(cards, value) ? "yes" : "**no**");
    }
  }

  private Distribution cards(CardStatistic statistic) {
    return Distribution.of(drawn.single().stream().mapToDouble(statistic.of()));
  }

  private static boolean isOrdinary(Distribution cards, double value) {
    return value >= cards.quantile(TAIL) && value <= cards.quantile(1 - TAIL);
  }

  private void differences(List<String> fromPublished) {
    text.heading("Where they differ from real prints");
    text.line(
        fromPublished.isEmpty()
            ? "No statistic lies outside what is published."
            : "Outside what is published:");
    text.line("");
    fromPublished.forEach(sentence -> text.line("- %s", sentence));
    if (!real.cards().isEmpty()) {
      unlikeTheRealCard();
    }
    text.line("");
    text.line(
        "What these numbers cannot show: drawn prints have no scars, no worn or flaking skin, and");
    text.line("no titles, lines or handwriting around them, and all subjects are adults.");
  }

  private void unlikeTheRealCard() {
    text.line("");
    text.line("Unlike the real card:");
    text.line("");
    for (CardStatistic statistic : OF_A_CARD) {
      Distribution cards = cards(statistic);
      double value = statistic.of().applyAsDouble(real);
      if (!isOrdinary(cards, value)) {
        text.line(
            "- %s: %s to %s on nine of ten drawn cards, %s on the real one.",
            statistic.name(),
            Markdown.format(statistic.form(), cards.quantile(TAIL)),
            Markdown.format(statistic.form(), cards.quantile(1 - TAIL)),
            Markdown.format(statistic.form(), value));
      }
    }
    text.line("");
    text.line(
        "One card of one person can show that drawn prints are not like it, but not how real");
    text.line("prints are spread.");
  }
}
