package ridgeproof.calibration.real;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import ridgeproof.calibration.print.Markdown;
import ridgeproof.calibration.real.CardTrial.Outcome;
import ridgeproof.calibration.real.CardTrial.Story;
import ridgeproof.ridges.matching.SequenceLimits;

/** What is said of cards put together of real prints, beside drawn ones, as Markdown. */
public final class CardsSection {

  public static final String TITLE = "## Real prints: finger position check";

  private static final double[] THRESHOLDS = {20, 30, 40, 60, 80};
  private static final double[] CLAIMS = {0, 0.5, 1, 1.5};

  /**
   * Cards of one kind.
   *
   * @param limits by which they are judged, fitted on other prints
   * @param inUse by which a user's are
   * @param prints what the cards are made of, in words
   */
  public record Column(
      String name, CardTrial trial, SequenceLimits limits, SequenceLimits inUse, String prints) {}

  private final List<Column> columns;
  private final int cards;
  private final List<Map<Story, Outcome>> fitted = new ArrayList<>();
  private final List<Map<Story, Outcome>> inUse = new ArrayList<>();
  private final Markdown text = new Markdown();

  public CardsSection(List<Column> columns, int cards) {
    this.columns = columns;
    this.cards = cards;
  }

  public String write(String command) {
    for (Column column : columns) {
      fitted.add(outcomes(column, column.limits()));
      inUse.add(outcomes(column, column.inUse()));
    }
    introduction(command);
    table(fitted);
    text.line("");
    text.line(
        "The same by the table in use, which is fitted on both real sets: no independent check.");
    text.line("");
    table(inUse);
    moved();
    return text.toString();
  }

  private Map<Story, Outcome> outcomes(Column column, SequenceLimits limits) {
    Map<Story, Outcome> outcomes = new EnumMap<>(Story.class);
    for (Story story : Story.values()) {
      outcomes.put(story, column.trial().run(story, cards, limits));
    }
    return outcomes;
  }

  private void introduction(String command) {
    text.line(TITLE).line("");
    text.line("Made by").line("").line("    " + command).line("");
    text.line(
        "%d cards of each kind, ten fingers each; the roll and the plain print of a finger are two"
            + " different impressions of it. A real set is judged by likelihoods that were fitted"
            + " on the other one. The similarities of all prints with each other are computed"
            + " once, and the cards are put together from them.",
        cards);
    for (Column column : columns) {
      text.line("- **%s**: %s.", column.name(), column.prints());
    }
    text.line("");
    text.line(
        "\"Seen\" is a card of which at least one misplaced finger is reported and no other;"
            + " \"named\" one whose disorder is called by its name, with all its fingers and no"
            + " other.");
    text.line("");
  }

  private void table(List<Map<Story, Outcome>> outcomes) {
    List<String> head = new ArrayList<>(List.of("cards"));
    columns.forEach(column -> head.add(column.name()));
    text.head(head.toArray(String[]::new));
    row("in order: fingers", outcomes, Story.RIGHT, one -> "" + one.fingers());
    row(
        "in order: fingers contradicted or part of a disorder that is none",
        outcomes,
        Story.RIGHT,
        one -> "" + one.falsely());
    row("in order: confirmed", outcomes, Story.RIGHT, CardsSection::confirmed);
    row(
        "in order: inconclusive",
        outcomes,
        Story.RIGHT,
        one -> Markdown.share(one.inconclusive(), one.fingers()));
    for (Story story : List.of(Story.EXCHANGE, Story.ROTATION, Story.SHIFT, Story.HANDS)) {
      share(story.words() + ": seen", outcomes, story, Outcome::seen);
      share(story.words() + ": named", outcomes, story, Outcome::named);
      share(
          story.words() + ": named, and every print shows it by itself",
          outcomes,
          story,
          Outcome::spoken);
      row(
          story.words() + ": fingers in their place called another",
          outcomes,
          story,
          one -> story == Story.HANDS ? "" : "" + one.falsely());
      row(
          story.words() + ": cards with a misplaced finger confirmed",
          outcomes,
          story,
          one -> "" + one.passed());
    }
    share(Story.STRANGER.words() + ": confirmed", outcomes, Story.STRANGER, Outcome::passed);
    row(
        Story.STRANGER.words() + ": other fingers called another",
        outcomes,
        Story.STRANGER,
        one -> "" + one.falsely());
  }

  private static String confirmed(Outcome one) {
    return Markdown.share(one.confirmed(), one.fingers());
  }

  private void share(
      String name,
      List<Map<Story, Outcome>> outcomes,
      Story story,
      ToDoubleFunction<Outcome> count) {
    row(
        name,
        outcomes,
        story,
        one -> Markdown.share(Math.round(count.applyAsDouble(one)), one.cards()));
  }

  private void row(
      String name,
      List<Map<Story, Outcome>> outcomes,
      Story story,
      Function<Outcome, String> cell) {
    List<Object> cells = new ArrayList<>(List.of(name));
    outcomes.forEach(one -> cells.add(cell.apply(one.get(story))));
    text.row(cells.toArray());
  }

  private void moved() {
    text.line("").line("### What moving the limits costs").line("");
    text.line(
        "`finger_match` of an agency's profile, %.0f by default. Where it is raised, every similarity"
            + " weighs less by that factor; where it is lowered, more prints are confirmed and none"
            + " weighs more. Fitted on the other set, as above.",
        columns.get(0).inUse().usual());
    sweep("finger_match", THRESHOLDS, "%.0f", (limits, value) -> limits.withThreshold(value));
    text.line("");
    text.line(
        "`place-claim` of `pixel-measures.csv`: odds, as a power of ten, from which on a finger is"
            + " called another. Its distance from the first row with a false claim is the margin.");
    sweep("place-claim", CLAIMS, "%.2f", (limits, value) -> limits.withClaim(value));
  }

  private interface Move {
    SequenceLimits to(SequenceLimits limits, double value);
  }

  private void sweep(String name, double[] values, String format, Move move) {
    text.line("");
    text.head(
        name,
        "cards",
        "in order: inconclusive",
        "in order: fingers falsely called another",
        "two exchanged: seen",
        "two exchanged: named",
        "nobody's print: confirmed");
    for (double value : values) {
      for (Column column : columns) {
        SequenceLimits limits = move.to(column.limits(), value);
        Outcome right = column.trial().run(Story.RIGHT, cards, limits);
        Outcome exchange = column.trial().run(Story.EXCHANGE, cards, limits);
        Outcome stranger = column.trial().run(Story.STRANGER, cards, limits);
        text.row(
            Markdown.format(format, value),
            column.name(),
            Markdown.share(right.inconclusive(), right.fingers()),
            right.falsely(),
            Markdown.share(exchange.seen(), cards),
            Markdown.share(exchange.named(), cards),
            Markdown.share(stranger.passed(), cards));
      }
    }
  }
}
