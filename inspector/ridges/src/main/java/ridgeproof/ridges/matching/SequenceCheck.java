package ridgeproof.ridges.matching;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import ridgeproof.ridges.matching.FingerMatchResult.Reason;
import ridgeproof.ridges.matching.FingerMatchResult.Verdict;
import ridgeproof.spec.layout.FingerPosition;

/**
 * Compares the plain prints of a set with its rolls and decides for all of them together which
 * belongs to which. Nothing is held against a finger for lack of a match: only what speaks for
 * another finger contradicts.
 */
public final class SequenceCheck {

  /** How many times more alike another roll must be than the own one, and the other way round. */
  private static final double CLEARLY = 2;

  /**
   * Of the threshold, from which a single match is certain enough to call a print misplaced: a card
   * holds over a hundred pairs of different fingers, and now and then one of them comes near the
   * threshold by chance.
   */
  private static final double CERTAIN = 1.5;

  private static final int MIN_MINUTIAE = 12;

  /** Among fewer other prints of the card the lead of one may be chance. */
  private static final int FEW_RIVALS = 8;

  /** What was fitted on some thousand pairs is good for no more. */
  private static final double MAX_ODDS = 9;

  private final CardScores scores;
  private final Set<FingerPosition> uncertain;
  private final SequenceLimits limits;
  private final SimilarityMatrix matrix;
  private final List<FingerPosition> rolls;
  private final List<FingerPosition> plains;
  private Arrangement arrangement;
  private Map<FingerPosition, FingerPosition> claims;

  private SequenceCheck(CardScores scores, Set<FingerPosition> uncertain, SequenceLimits limits) {
    this.scores = scores;
    this.uncertain = Set.copyOf(uncertain);
    this.limits = limits;
    matrix = SimilarityMatrix.of(scores);
    rolls = matrix.rolls();
    plains = matrix.plains();
    arrange();
    lookAgain();
  }

  private void arrange() {
    arrangement = new Arrangement(matrix, limits);
    claims = claims();
  }

  /**
   * Takes second templates of plain prints that are not confirmed, then of the rolls that are left:
   * of few prints, since to make a template is most of the work.
   */
  private void lookAgain() {
    List<FingerPosition> open = open();
    if (open.isEmpty() || openRolls(open).isEmpty()) {
      return;
    }
    matrix.lookAgainAtPlains(open);
    arrange();
    List<FingerPosition> still = open();
    List<FingerPosition> left = openRolls(still);
    if (!still.isEmpty() && !left.isEmpty()) {
      matrix.lookAgainAtRolls(still, left);
      arrange();
    }
  }

  private List<FingerPosition> open() {
    return plains.stream().filter(plain -> answer(plain).verdict() != Verdict.CONFIRMED).toList();
  }

  /** The rolls that no plain print is confirmed by. */
  private List<FingerPosition> openRolls(List<FingerPosition> open) {
    return rolls.stream().filter(roll -> open.contains(roll) || !plains.contains(roll)).toList();
  }

  /** Of plain prints whose places are certain, without second templates. */
  public static SequenceResult check(
      Map<FingerPosition, Minutiae> rolls,
      Map<FingerPosition, Minutiae> plains,
      SequenceLimits limits) {
    return check(rolls, plains, Set.of(), SecondLook.NONE, limits);
  }

  /**
   * Answers for each finger and names what is out of order.
   *
   * @param rolls by the names they bear; a missing or unusable one is left out
   * @param plains plain prints, single or from slaps, by the names they bear
   * @param uncertain plain prints that bear a name only by their place among fewer prints than
   *     there are fingers; another finger's print may stand there without any mistake of the
   *     technician
   * @param second asked for prints that do not match by the first template
   */
  public static SequenceResult check(
      Map<FingerPosition, Minutiae> rolls,
      Map<FingerPosition, Minutiae> plains,
      Set<FingerPosition> uncertain,
      SecondLook second,
      SequenceLimits limits) {
    return check(new TemplateScores(rolls, plains, second), uncertain, limits);
  }

  /** The same of prints whose similarities come from elsewhere. */
  public static SequenceResult check(
      CardScores scores, Set<FingerPosition> uncertain, SequenceLimits limits) {
    SequenceCheck check = new SequenceCheck(scores, uncertain, limits);
    List<FingerMatchResult> answers = check.answers();
    check.matrix.compareRolls(check.settled(answers));
    return new SequenceResult(
        answers,
        new SequenceErrorFinder(
                answers, check.matrix, check.arrangement, check.claims, CERTAIN * limits.careful())
            .named(),
        limits.threshold());
  }

  /** The plain prints that are of another roll with enough certainty, and which. */
  private Map<FingerPosition, FingerPosition> claims() {
    Map<FingerPosition, FingerPosition> moved = arrangement.moved();
    Map<FingerPosition, FingerPosition> sure = new EnumMap<>(FingerPosition.class);
    moved.forEach(
        (plain, roll) -> {
          Arrangement.Place place = arrangement.place(plain);
          double needed = isClosed(plain, moved) ? limits.claim() : limits.claimAlone();
          if (!uncertain.contains(plain)
              && place.overOwn() >= needed
              && place.overOthers() >= limits.claim()) {
            sure.put(plain, roll);
          }
        });
    return sure;
  }

  /** Whether following from box to box comes back to the print. */
  private static boolean isClosed(FingerPosition plain, Map<FingerPosition, FingerPosition> moved) {
    FingerPosition at = moved.get(plain);
    for (int step = 0; at != null && at != plain && step < moved.size(); step++) {
      at = moved.get(at);
    }
    return at == plain;
  }

  private List<FingerMatchResult> answers() {
    List<FingerMatchResult> answers = new ArrayList<>();
    for (FingerPosition position : FingerPosition.values()) {
      if (rolls.contains(position) || plains.contains(position)) {
        answers.add(answer(position));
      }
    }
    return answers;
  }

  private Set<FingerPosition> settled(List<FingerMatchResult> answers) {
    return answers.stream()
        .filter(a -> a.verdict() == Verdict.CONFIRMED && a.otherScore() < limits.threshold())
        .map(FingerMatchResult::position)
        .collect(Collectors.toUnmodifiableSet());
  }

  private FingerMatchResult answer(FingerPosition position) {
    if (!plains.contains(position)) {
      return new FingerMatchResult(
          position, Verdict.INCONCLUSIVE, Reason.NO_PLAIN_PRINT, 0, Optional.empty(), 0);
    }
    double own = matrix.plainToRoll(position, position);
    Optional<FingerPosition> likest = mostAlike(position);
    double most = likest.map(roll -> matrix.plainToRoll(position, roll)).orElse(0.0);
    FingerPosition claimed = claims.get(position);
    if (claimed != null && speaksFor(position, claimed)) {
      return new FingerMatchResult(
          position,
          Verdict.CONTRADICTED,
          Reason.MATCHES_ANOTHER_ROLL,
          own,
          Optional.of(claimed),
          matrix.plainToRoll(position, claimed),
          arrangement.place(position).overOwn());
    }
    Optional<Reason> confirmed =
        claimed == null ? confirmed(position, own, most) : Optional.empty();
    if (confirmed.isPresent()) {
      return new FingerMatchResult(
          position,
          Verdict.CONFIRMED,
          confirmed.get(),
          own,
          likest,
          most,
          Math.min(MAX_ODDS, Math.max(arrangement.place(position).evidence(), limits.weight(own))));
    }
    if (own < limits.threshold() && uncertain.contains(position)) {
      return new FingerMatchResult(
          position, Verdict.INCONCLUSIVE, Reason.PLACE_UNCERTAIN, own, likest, most);
    }
    return alone(position, own, likest, most);
  }

  /** What the print says by itself, where the card as a whole does not decide. */
  private FingerMatchResult alone(
      FingerPosition position, double own, Optional<FingerPosition> likest, double most) {
    boolean ownMatches = own >= limits.threshold();
    boolean otherIsCertain = most >= CERTAIN * limits.careful();
    if (otherIsCertain && !ownMatches && most >= CLEARLY * own && isOnlyMatch(position, likest)) {
      return new FingerMatchResult(
          position,
          Verdict.CONTRADICTED,
          Reason.MATCHES_ANOTHER_ROLL,
          own,
          likest,
          most,
          limits.weight(most) - limits.weight(own));
    }
    boolean several = most >= limits.threshold() && (ownMatches || otherIsCertain);
    Reason reason = several ? Reason.MATCHES_SEVERAL_ROLLS : without(position);
    return new FingerMatchResult(position, Verdict.INCONCLUSIVE, reason, own, likest, most);
  }

  /**
   * Whether the print itself is more like the roll than its own; else it is placed by the others.
   */
  private boolean speaksFor(FingerPosition plain, FingerPosition roll) {
    return limits.weight(matrix.plainToRoll(plain, roll))
            - limits.weight(matrix.plainToRoll(plain, plain))
        >= limits.confirmed();
  }

  private Optional<Reason> confirmed(FingerPosition position, double own, double most) {
    Arrangement.Place place = arrangement.place(position);
    if (place.roll().filter(roll -> roll == position).isEmpty()) {
      return Optional.empty();
    }
    if (own >= limits.threshold()) {
      return most < limits.threshold() || own >= CLEARLY * most
          ? Optional.of(Reason.MATCHES_OWN_ROLL)
          : Optional.empty();
    }
    boolean leads =
        place.evidence() >= limits.confirmed()
            && rolls.size() + plains.size() - 2 >= FEW_RIVALS
            && !uncertain.contains(position)
            && own - Math.max(most, mostAlikePlain(position)) > limits.scaledLead();
    return leads ? Optional.of(Reason.MOST_LIKE_OWN_ROLL) : Optional.empty();
  }

  private Reason without(FingerPosition position) {
    if (!rolls.contains(position)) {
      return Reason.NO_ROLL;
    }
    boolean few =
        scores.plains().get(position) < MIN_MINUTIAE || scores.rolls().get(position) < MIN_MINUTIAE;
    return few ? Reason.TOO_FEW_MINUTIAE : Reason.MATCHES_NO_ROLL;
  }

  private Optional<FingerPosition> mostAlike(FingerPosition plain) {
    FingerPosition best = null;
    for (FingerPosition roll : rolls) {
      double score = matrix.plainToRoll(plain, roll);
      if (roll != plain && score > 0 && (best == null || score > matrix.plainToRoll(plain, best))) {
        best = roll;
      }
    }
    return Optional.ofNullable(best);
  }

  /** How like the roll the likest plain print of another name is. */
  private double mostAlikePlain(FingerPosition roll) {
    return plains.stream()
        .filter(plain -> plain != roll)
        .mapToDouble(plain -> matrix.plainToRoll(plain, roll))
        .max()
        .orElse(0);
  }

  /** Two rolls of one finger both match, and then there is no telling which is misplaced. */
  private boolean isOnlyMatch(FingerPosition plain, Optional<FingerPosition> match) {
    return rolls.stream()
        .filter(roll -> roll != match.orElseThrow())
        .allMatch(
            roll ->
                matrix.plainToRoll(plain, roll) * CLEARLY
                    <= matrix.plainToRoll(plain, match.orElseThrow()));
  }
}
