package ridgeproof.calibration.statistics;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import ridgeproof.calibration.print.Distribution;
import ridgeproof.examination.facts.RidgeAnalysis.Impression;
import ridgeproof.spec.layout.FingerPosition;

/**
 * What many cards show, without what is large.
 *
 * @param cards the prints of each
 * @param scores of each card, in the same order
 */
public record CardStatistics(List<List<ObservedPrint>> cards, List<SimilarityScores> scores) {

  /** So many cards are in memory at a time, with their templates. */
  private static final int TOGETHER = 16;

  public CardStatistics {
    cards = cards.stream().map(List::copyOf).toList();
    scores = List.copyOf(scores);
  }

  /** Draws cards; each is also compared with the one before it. */
  public static CardStatistics draw(long seed, int cards) {
    CleanCards source = new CleanCards(seed);
    List<List<ObservedPrint>> prints = new ArrayList<>();
    List<SimilarityScores> scores = new ArrayList<>();
    Optional<ObservedCard> last = Optional.empty();
    for (int done = 0; done < cards; done += TOGETHER) {
      List<ObservedCard> drawn = source.next(Math.min(TOGETHER, cards - done));
      Optional<ObservedCard> before = last;
      scores.addAll(
          IntStream.range(0, drawn.size())
              .parallel()
              .mapToObj(
                  i ->
                      SimilarityScores.of(
                          drawn.get(i), i == 0 ? before : Optional.of(drawn.get(i - 1))))
              .toList());
      drawn.forEach(card -> prints.add(card.prints()));
      last = Optional.of(drawn.get(drawn.size() - 1));
    }
    return new CardStatistics(prints, scores);
  }

  public static CardStatistics of(ObservedCard card) {
    return new CardStatistics(
        List.of(card.prints()), List.of(SimilarityScores.of(card, Optional.empty())));
  }

  /** Each card by itself. */
  List<CardStatistics> single() {
    return IntStream.range(0, cards.size())
        .mapToObj(card -> new CardStatistics(List.of(cards.get(card)), List.of(scores.get(card))))
        .toList();
  }

  List<ObservedPrint> prints(Impression kind) {
    return cards.stream().flatMap(List::stream).filter(print -> print.kind() == kind).toList();
  }

  Distribution scores(SimilarityScores.Relation relation) {
    return SimilarityScores.of(scores, relation);
  }

  /** A value of what is known of the prints of one kind, because they were drawn. */
  Distribution known(
      Impression kind,
      Predicate<FingerPosition> these,
      ToDoubleFunction<ObservedPrint.Truth> value) {
    return Distribution.of(
        prints(kind).stream()
            .filter(print -> these.test(print.finger()))
            .flatMap(print -> print.truth().stream())
            .mapToDouble(value));
  }

  /** A value of what is seen of the prints of one kind that were found. */
  Distribution seen(
      Impression kind,
      Predicate<FingerPosition> these,
      ToDoubleFunction<ObservedPrint.Sight> value) {
    return Distribution.of(
        prints(kind).stream()
            .filter(print -> these.test(print.finger()))
            .flatMap(print -> print.sight().stream())
            .mapToDouble(value));
  }
}
