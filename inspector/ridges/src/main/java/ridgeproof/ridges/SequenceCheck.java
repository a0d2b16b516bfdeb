package ridgeproof.ridges;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import ridgeproof.ridges.FingerAnswer.Reason;
import ridgeproof.ridges.FingerAnswer.Verdict;

/**
 * Compares the plain prints of a set with its rolls. Nothing is held against a finger for lack of a
 * match: only a clear match with another roll contradicts.
 */
public final class SequenceCheck {

  /** How many times more alike another roll must be than the own one, and the other way round. */
  private static final double CLEARLY = 2;

  /**
   * Of the threshold, from which a match is taken for certain enough to call a print misplaced: a
   * card holds over a hundred pairs of different fingers, and now and then one of them comes near
   * the threshold by chance.
   */
  private static final double CERTAIN = 1.5;

  private static final int LEAST_MINUTIAE = 12;

  private final Map<FingerPosition, Minutiae> rolls;
  private final Map<FingerPosition, Minutiae> plains;
  private final Set<FingerPosition> uncertain;
  private final double threshold;
  private final SimilarityMatrix matrix;

  private SequenceCheck(
      Map<FingerPosition, Minutiae> rolls,
      Map<FingerPosition, Minutiae> plains,
      Set<FingerPosition> uncertain,
      double threshold) {
    this.uncertain = uncertain;
    this.rolls = rolls;
    this.plains = plains;
    this.threshold = threshold;
    matrix = SimilarityMatrix.of(rolls, plains);
  }

  /** {@link #check(Map, Map, Set, double)} of plain prints whose places are certain. */
  public static SequenceAnswers check(
      Map<FingerPosition, Minutiae> rolls, Map<FingerPosition, Minutiae> plains, double threshold) {
    return check(rolls, plains, Set.of(), threshold);
  }

  /**
   * Answers for each finger and names what is out of order.
   *
   * @param rolls by the names they bear; a missing or unusable one is left out
   * @param plains plain prints, single or from slaps, by the names they bear
   * @param uncertain plain prints that bear a name only by their place among fewer prints than
   *     there are fingers; another finger's print may stand there without any mistake of the
   *     technician
   * @param threshold similarity that counts as a match
   */
  public static SequenceAnswers check(
      Map<FingerPosition, Minutiae> rolls,
      Map<FingerPosition, Minutiae> plains,
      Set<FingerPosition> uncertain,
      double threshold) {
    SequenceCheck check =
        new SequenceCheck(copy(rolls), copy(plains), Set.copyOf(uncertain), threshold);
    List<FingerAnswer> answers = check.answers();
    check.matrix.compareRolls(check.settled(answers));
    return new SequenceAnswers(
        answers,
        new SequenceIrregularities(answers, check.matrix, CERTAIN * threshold).named(),
        threshold);
  }

  private static Map<FingerPosition, Minutiae> copy(Map<FingerPosition, Minutiae> prints) {
    Map<FingerPosition, Minutiae> copy = new EnumMap<>(FingerPosition.class);
    copy.putAll(prints);
    return copy;
  }

  private List<FingerAnswer> answers() {
    List<FingerAnswer> answers = new ArrayList<>();
    for (FingerPosition position : FingerPosition.values()) {
      if (rolls.containsKey(position) || plains.containsKey(position)) {
        answers.add(answer(position));
      }
    }
    return answers;
  }

  private Set<FingerPosition> settled(List<FingerAnswer> answers) {
    return answers.stream()
        .filter(a -> a.verdict() == Verdict.CONFIRMED && a.otherScore() < threshold)
        .map(FingerAnswer::position)
        .collect(Collectors.toUnmodifiableSet());
  }

  private FingerAnswer answer(FingerPosition position) {
    if (!plains.containsKey(position)) {
      return new FingerAnswer(
          position, Verdict.INCONCLUSIVE, Reason.NO_PLAIN_PRINT, 0, Optional.empty(), 0);
    }
    double own = matrix.plainToRoll(position, position);
    Optional<FingerPosition> other = mostAlike(position);
    double most = other.map(roll -> matrix.plainToRoll(position, roll)).orElse(0.0);
    boolean ownMatches = own >= threshold;
    boolean otherMatches = most >= threshold;
    if (ownMatches && (!otherMatches || own >= CLEARLY * most)) {
      return new FingerAnswer(
          position, Verdict.CONFIRMED, Reason.MATCHES_OWN_ROLL, own, other, most);
    }
    if (!ownMatches && uncertain.contains(position)) {
      return new FingerAnswer(
          position, Verdict.INCONCLUSIVE, Reason.PLACE_UNCERTAIN, own, other, most);
    }
    boolean otherIsCertain = most >= CERTAIN * threshold;
    if (otherIsCertain && !ownMatches && most >= CLEARLY * own && isOnlyMatch(position, other)) {
      return new FingerAnswer(
          position, Verdict.CONTRADICTED, Reason.MATCHES_ANOTHER_ROLL, own, other, most);
    }
    boolean several = otherMatches && (ownMatches || otherIsCertain);
    Reason reason = several ? Reason.MATCHES_SEVERAL_ROLLS : without(position);
    return new FingerAnswer(position, Verdict.INCONCLUSIVE, reason, own, other, most);
  }

  private Reason without(FingerPosition position) {
    if (!rolls.containsKey(position)) {
      return Reason.NO_ROLL;
    }
    boolean few =
        plains.get(position).count() < LEAST_MINUTIAE
            || rolls.get(position).count() < LEAST_MINUTIAE;
    return few ? Reason.TOO_FEW_MINUTIAE : Reason.MATCHES_NO_ROLL;
  }

  private Optional<FingerPosition> mostAlike(FingerPosition plain) {
    FingerPosition best = null;
    for (FingerPosition roll : rolls.keySet()) {
      double score = matrix.plainToRoll(plain, roll);
      if (roll != plain && score > 0 && (best == null || score > matrix.plainToRoll(plain, best))) {
        best = roll;
      }
    }
    return Optional.ofNullable(best);
  }

  /** Two rolls of one finger both match, and then there is no telling which is misplaced. */
  private boolean isOnlyMatch(FingerPosition plain, Optional<FingerPosition> match) {
    return rolls.keySet().stream()
        .filter(roll -> roll != match.orElseThrow())
        .allMatch(
            roll ->
                matrix.plainToRoll(plain, roll) * CLEARLY
                    <= matrix.plainToRoll(plain, match.orElseThrow()));
  }
}
