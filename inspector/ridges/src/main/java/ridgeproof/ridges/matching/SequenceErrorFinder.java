package ridgeproof.ridges.matching;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import ridgeproof.ridges.matching.FingerMatchResult.Verdict;
import ridgeproof.ridges.matching.SequenceError.Kind;
import ridgeproof.spec.layout.FingerPosition;

/** Names what the contradicted fingers of a set have in common. */
final class SequenceErrorFinder {

  private static final int HAND = 5;
  private static final int FEW_OF_A_HAND = 3;
  private static final int SHIFT = 4;

  private final Map<FingerPosition, FingerMatchResult> contradicted =
      new EnumMap<>(FingerPosition.class);
  private final Map<FingerPosition, FingerMatchResult> answers =
      new EnumMap<>(FingerPosition.class);
  private final SimilarityMatrix matrix;
  private final Arrangement arrangement;
  private final Map<FingerPosition, FingerPosition> claims;
  private final double certain;
  private final List<SequenceError> named = new ArrayList<>();

  SequenceErrorFinder(
      List<FingerMatchResult> list,
      SimilarityMatrix matrix,
      Arrangement arrangement,
      Map<FingerPosition, FingerPosition> claims,
      double certain) {
    this.matrix = matrix;
    this.arrangement = arrangement;
    this.claims = claims;
    this.certain = certain;
    for (FingerMatchResult answer : list) {
      answers.put(answer.position(), answer);
      if (answer.verdict() == Verdict.CONTRADICTED) {
        contradicted.put(answer.position(), answer);
      }
    }
  }

  List<SequenceError> named() {
    named.clear();
    nameTwice();
    boolean hands =
        nameHands(position -> FingerPosition.values()[(position.ordinal() + HAND) % (2 * HAND)])
            || nameHands(SequenceErrorFinder::inSlapOrder);
    if (!hands) {
      Set<FingerPosition> inRings = nameRings();
      contradicted.keySet().stream().filter(one -> !inRings.contains(one)).forEach(this::nameOne);
    }
    named.sort(
        Comparator.comparing(SequenceError::mutual)
            .thenComparingDouble(SequenceError::score)
            .reversed());
    return named;
  }

  /** Prints that are in each other's boxes; a print that is too faint is placed by the others. */
  private Set<FingerPosition> nameRings() {
    Set<FingerPosition> done = EnumSet.noneOf(FingerPosition.class);
    for (FingerPosition first : claims.keySet()) {
      List<FingerPosition> ring = new ArrayList<>();
      FingerPosition at = first;
      while (at != null && !ring.contains(at)) {
        ring.add(at);
        at = claims.get(at);
      }
      boolean spoken = ring.stream().anyMatch(contradicted::containsKey);
      if (at == first && spoken && done.addAll(ring)) {
        named.add(ring(ring));
      }
    }
    return done;
  }

  private SequenceError ring(List<FingerPosition> ring) {
    List<FingerPosition> positions = ring.stream().sorted().toList();
    return new SequenceError(
        kind(ring),
        positions,
        contradicted.keySet().containsAll(ring),
        ring.stream()
            .filter(contradicted::containsKey)
            .mapToDouble(plain -> contradicted.get(plain).otherScore())
            .min()
            .orElse(0),
        ring.stream().mapToDouble(one -> arrangement.place(one).overOwn()).min().orElse(0));
  }

  private static Kind kind(List<FingerPosition> ring) {
    if (ring.size() == 2) {
      return ring.get(0).isThumb() && ring.get(1).isThumb()
          ? Kind.THUMBS_EXCHANGED
          : Kind.EXCHANGED;
    }
    return ring.size() >= SHIFT && (areShifted(ring, 1) || areShifted(ring, -1))
        ? Kind.SHIFTED
        : Kind.ROTATED;
  }

  /** Whether all of a hand's prints but one lie one box on. */
  private static boolean areShifted(List<FingerPosition> ring, int step) {
    int fitting = 0;
    for (int i = 0; i < ring.size(); i++) {
      int next = ring.get((i + 1) % ring.size()).ordinal();
      fitting += next - ring.get(i).ordinal() == step ? 1 : 0;
    }
    boolean oneHand = ring.stream().map(FingerPosition::hand).distinct().count() == 1;
    return oneHand && fitting == ring.size() - 1;
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
    for (FingerMatchResult answer : contradicted.values()) {
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
    named.add(
        new SequenceError(
            Kind.HANDS_EXCHANGED, List.copyOf(concerned), bothHands, weakest, odds(concerned)));
    return true;
  }

  private double odds(Set<FingerPosition> concerned) {
    return concerned.stream()
        .filter(contradicted::containsKey)
        .mapToDouble(finger -> contradicted.get(finger).odds())
        .min()
        .orElse(0);
  }

  private void nameOne(FingerPosition here) {
    FingerMatchResult answer = contradicted.get(here);
    FingerPosition there = answer.other().orElseThrow();
    if (mayBeExchanged(here, there)) {
      FingerPosition first = here.compareTo(there) < 0 ? here : there;
      named.add(exchange(first, first == here ? there : here, answer));
    } else {
      named.add(
          new SequenceError(
              Kind.FOUND_ELSEWHERE,
              List.of(here, there),
              false,
              answer.otherScore(),
              answer.odds()));
    }
  }

  /** The other half of an exchange may be too faint to say so, but must not say otherwise. */
  private boolean mayBeExchanged(FingerPosition here, FingerPosition there) {
    FingerMatchResult answer = answers.get(there);
    FingerPosition back = arrangement.moved().getOrDefault(there, here);
    return answer != null && answer.verdict() == Verdict.INCONCLUSIVE && back == here;
  }

  private static SequenceError exchange(
      FingerPosition first, FingerPosition second, FingerMatchResult answer) {
    Kind kind = first.isThumb() && second.isThumb() ? Kind.THUMBS_EXCHANGED : Kind.EXCHANGED;
    return new SequenceError(
        kind, List.of(first, second), false, answer.otherScore(), answer.odds());
  }

  private void nameTwice() {
    FingerPosition[] all = FingerPosition.values();
    for (int i = 0; i < all.length; i++) {
      for (int j = i + 1; j < all.length; j++) {
        List<FingerPosition> pair = List.of(all[i], all[j]);
        double rolls = matrix.rolls(all[i], all[j]);
        double plains = matrix.plains(all[i], all[j]);
        if (rolls >= certain) {
          named.add(new SequenceError(Kind.ROLLED_TWICE, pair, true, rolls));
        }
        if (plains >= certain) {
          named.add(new SequenceError(Kind.PLAIN_TWICE, pair, true, plains));
        }
      }
    }
  }
}
