package ridgeproof.calibration.statistics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ridgeproof.calibration.print.Distribution;
import ridgeproof.ridges.matching.Minutiae;
import ridgeproof.spec.layout.FingerPosition;

/** Similarities of plain prints with rolls, by what the two have to do with each other. */
record SimilarityScores(Map<Relation, double[]> scores) {

  /** Whose two prints are. */
  enum Relation {
    SAME_FINGER("same finger"),
    SAME_SUBJECT("other fingers of the subject"),
    OTHER_SUBJECT("fingers of another subject");

    private final String text;

    Relation(String text) {
      this.text = text;
    }

    @Override
    public String toString() {
      return text;
    }
  }

  /**
   * Each plain print of a card against every roll of it, and every roll of another.
   *
   * @param other a card of somebody else
   */
  static SimilarityScores of(ObservedCard card, Optional<ObservedCard> other) {
    Map<Relation, List<Double>> found = new EnumMap<>(Relation.class);
    Map<FingerPosition, Minutiae> rolls = card.rolls();
    List<Minutiae> strangers =
        other.map(stranger -> List.copyOf(stranger.rolls().values())).orElse(List.of());
    card.plains()
        .forEach(
            (finger, plain) -> {
              List<Minutiae> candidates = new ArrayList<>(rolls.values());
              candidates.addAll(strangers);
              double[] similarities = plain.similarities(candidates);
              int next = 0;
              for (FingerPosition roll : rolls.keySet()) {
                Relation relation = roll == finger ? Relation.SAME_FINGER : Relation.SAME_SUBJECT;
                add(found, relation, similarities[next++]);
              }
              for (int i = 0; i < strangers.size(); i++) {
                add(found, Relation.OTHER_SUBJECT, similarities[next++]);
              }
            });
    Map<Relation, double[]> scores = new EnumMap<>(Relation.class);
    found.forEach(
        (relation, list) ->
            scores.put(relation, list.stream().mapToDouble(Double::doubleValue).toArray()));
    return new SimilarityScores(scores);
  }

  private static void add(Map<Relation, List<Double>> found, Relation relation, double score) {
    found.computeIfAbsent(relation, key -> new ArrayList<>()).add(score);
  }

  /** Those of one relation over many cards. */
  static Distribution of(List<SimilarityScores> all, Relation relation) {
    return Distribution.of(
        all.stream()
            .flatMapToDouble(
                one -> Arrays.stream(one.scores.getOrDefault(relation, new double[0]))));
  }
}
