package ridgeproof.ridges;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import ridgeproof.ridges.FingerAnswer.Verdict;
import ridgeproof.ridges.Irregularity.Kind;

/** Names what the contradicted fingers of a set have in common. */
final class SequenceIrregularities {

  private static final int HAND = 5;
  private static final int FEW_OF_A_HAND = 3;

  private final Map<FingerPosition, FingerAnswer> contradicted =
      new EnumMap<>(FingerPosition.class);
  private final Map<FingerPosition, FingerAnswer> answers = new EnumMap<>(FingerPosition.class);
  private final SimilarityMatrix matrix;
  private final double certain;
  private final List<Irregularity> named = new ArrayList<>();

  SequenceIrregularities(List<FingerAnswer> list, SimilarityMatrix matrix, double certain) {
    this.matrix = matrix;
    this.certain = certain;
    for (FingerAnswer answer : list) {
      answers.put(answer.position(), answer);
      if (answer.verdict() == Verdict.CONTRADICTED) {
        contradicted.put(answer.position(), answer);
      }
    }
  }

  List<Irregularity> named() {
    named.clear();
    nameTwice();
    boolean hands =
        nameHands(position -> FingerPosition.values()[(position.ordinal() + HAND) % (2 * HAND)])
            || nameHands(SequenceIrregularities::inSlapOrder);
    if (!hands) {
      namePairs();
    }
    named.sort(
        Comparator.comparing(Irregularity::mutual)
            .thenComparingDouble(Irregularity::score)
            .reversed());
    return named;
  }

  /** The finger of the other hand at the same place from the left in a slap. */
  private static FingerPosition inSlapOrder(FingerPosition position) {
    int other = position.isThumb() ? 0 : HAND - position.indexOnHand();
    int hand = position.hand() == FingerPosition.Hand.RIGHT ? HAND : 0;
    return FingerPosition.values()[hand + other];
  }

  private boolean nameHands(UnaryOperator<FingerPosition> counterpart) {
    TreeSet<FingerPosition> concerned = new TreeSet<>();
    int count = 0;
    int fitting = 0;
    double weakest = Double.MAX_VALUE;
    for (FingerAnswer answer : contradicted.values()) {
      count += answer.position().isThumb() ? 0 : 1;
      FingerPosition other = counterpart.apply(answer.position());
      if (answer.other().orElseThrow() == other) {
        fitting += answer.position().isThumb() ? 0 : 1;
        weakest = Math.min(weakest, answer.otherScore());
        concerned.add(answer.position());
        concerned.add(other);
      }
    }
    if (fitting < FEW_OF_A_HAND || fitting < count) {
      return false;
    }
    boolean bothHands =
        contradicted.keySet().stream().map(FingerPosition::hand).distinct().count() == 2;
    named.add(new Irregularity(Kind.HANDS_EXCHANGED, List.copyOf(concerned), bothHands, weakest));
    return true;
  }

  private void namePairs() {
    for (FingerAnswer answer : contradicted.values()) {
      FingerPosition here = answer.position();
      FingerPosition there = answer.other().orElseThrow();
      FingerAnswer back = contradicted.get(there);
      boolean mutual = back != null && back.other().orElseThrow() == here;
      if (mutual && here.compareTo(there) < 0) {
        named.add(exchange(here, there, true, Math.min(answer.otherScore(), back.otherScore())));
      } else if (!mutual && mayBeExchanged(there)) {
        FingerPosition first = here.compareTo(there) < 0 ? here : there;
        named.add(exchange(first, first == here ? there : here, false, answer.otherScore()));
      } else if (!mutual) {
        named.add(
            new Irregularity(
                Kind.FOUND_ELSEWHERE, List.of(here, there), false, answer.otherScore()));
      }
    }
  }

  /** The other half of an exchange may be too faint to say so, but must not say otherwise. */
  private boolean mayBeExchanged(FingerPosition there) {
    FingerAnswer answer = answers.get(there);
    return answer != null && answer.verdict() == Verdict.INCONCLUSIVE;
  }

  private static Irregularity exchange(
      FingerPosition first, FingerPosition second, boolean mutual, double score) {
    Kind kind = first.isThumb() && second.isThumb() ? Kind.THUMBS_EXCHANGED : Kind.EXCHANGED;
    return new Irregularity(kind, List.of(first, second), mutual, score);
  }

  private void nameTwice() {
    FingerPosition[] all = FingerPosition.values();
    for (int i = 0; i < all.length; i++) {
      for (int j = i + 1; j < all.length; j++) {
        List<FingerPosition> pair = List.of(all[i], all[j]);
        double rolls = matrix.rolls(all[i], all[j]);
        double plains = matrix.plains(all[i], all[j]);
        if (rolls >= certain) {
          named.add(new Irregularity(Kind.ROLLED_TWICE, pair, true, rolls));
        }
        if (plains >= certain) {
          named.add(new Irregularity(Kind.PLAIN_TWICE, pair, true, plains));
        }
      }
    }
  }
}
