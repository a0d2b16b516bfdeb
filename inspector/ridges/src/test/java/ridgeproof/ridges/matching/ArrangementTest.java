package ridgeproof.ridges.matching;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.junit.jupiter.api.Test;
import ridgeproof.ridges.matching.FingerMatchResult.Reason;
import ridgeproof.ridges.matching.FingerMatchResult.Verdict;
import ridgeproof.ridges.matching.SequenceError.Kind;
import ridgeproof.spec.layout.FingerPosition;

/** Cards of which only the similarities are known. */
class ArrangementTest {

  private static final FingerPosition[] ALL = FingerPosition.values();
  private static final SequenceLimits LIMITS = SequenceCheckTest.LIMITS;

  /** Ten rolls and ten plain prints; pairs of which nothing is said are a little alike. */
  private static final class Card implements CardScores {
    private final double[][] scores = new double[ALL.length][ALL.length];
    private final double[][] again = new double[ALL.length][ALL.length];
    private final double[][] rollsAgain = new double[ALL.length][ALL.length];
    private final Set<FingerPosition> looks = ConcurrentHashMap.newKeySet();
    private final Map<FingerPosition, Integer> rolls = new EnumMap<>(FingerPosition.class);
    private final Map<FingerPosition, Integer> plains = new EnumMap<>(FingerPosition.class);

    private static Card inOrder(double similarity) {
      Card card = new Card();
      for (FingerPosition finger : ALL) {
        card.rolls.put(finger, 60);
        card.plains.put(finger, 30);
        Arrays.fill(card.scores[finger.ordinal()], 2);
        card.scores[finger.ordinal()][finger.ordinal()] = similarity;
      }
      return card;
    }

    /** The roll of each of these fingers is in the box of the next one. */
    private Card moved(FingerPosition... fingers) {
      for (double[] row : scores) {
        double last = row[fingers[fingers.length - 1].ordinal()];
        for (int i = fingers.length - 1; i > 0; i--) {
          row[fingers[i].ordinal()] = row[fingers[i - 1].ordinal()];
        }
        row[fingers[0].ordinal()] = last;
      }
      return this;
    }

    private Card with(FingerPosition plain, FingerPosition roll, double similarity) {
      scores[plain.ordinal()][roll.ordinal()] = similarity;
      return this;
    }

    private SequenceResult answers() {
      return SequenceCheck.check(this, Set.of(), LIMITS);
    }

    @Override
    public Map<FingerPosition, Integer> rolls() {
      return rolls;
    }

    @Override
    public Map<FingerPosition, Integer> plains() {
      return plains;
    }

    @Override
    public double[] ofPlain(
        FingerPosition plain, List<FingerPosition> withRolls, List<FingerPosition> otherPlains) {
      double[] found = new double[withRolls.size() + otherPlains.size()];
      for (int i = 0; i < withRolls.size(); i++) {
        found[i] = scores[plain.ordinal()][withRolls.get(i).ordinal()];
      }
      return found;
    }

    @Override
    public double[] ofRoll(FingerPosition roll, List<FingerPosition> others) {
      return new double[others.size()];
    }

    @Override
    public double[] ofPlainAgain(FingerPosition plain, List<FingerPosition> withRolls) {
      looks.add(plain);
      return of(again, plain, withRolls);
    }

    @Override
    public double[] ofRollsAgain(FingerPosition plain, List<FingerPosition> withRolls) {
      return of(rollsAgain, plain, withRolls);
    }

    private static double[] of(
        double[][] scores, FingerPosition plain, List<FingerPosition> withRolls) {
      return withRolls.stream()
          .mapToDouble(roll -> scores[plain.ordinal()][roll.ordinal()])
          .toArray();
    }
  }

  private static FingerMatchResult of(SequenceResult answers, FingerPosition finger) {
    return answers.answers().get(finger.ordinal());
  }

  private static void assertNamed(Kind kind, List<FingerPosition> fingers, SequenceResult said) {
    assertEquals(1, said.irregularities().size(), said.toString());
    SequenceError named = said.irregularities().get(0);
    assertEquals(kind, named.kind());
    assertEquals(new HashSet<>(fingers), new HashSet<>(named.positions()));
    assertTrue(named.odds() >= LIMITS.claim());
    for (FingerMatchResult answer : said.answers()) {
      boolean concerned = fingers.contains(answer.position());
      assertEquals(concerned, answer.verdict() != Verdict.CONFIRMED, answer.toString());
    }
  }

  @Test
  void aFaintFingerIsConfirmedWhereNothingElseOnTheCardComesNear() {
    SequenceResult said =
        Card.inOrder(90).with(FingerPosition.LEFT_RING, FingerPosition.LEFT_RING, 18).answers();
    FingerMatchResult faint = of(said, FingerPosition.LEFT_RING);
    assertEquals(Verdict.CONFIRMED, faint.verdict());
    assertEquals(Reason.MOST_LIKE_OWN_ROLL, faint.reason());
    assertTrue(faint.odds() > 1);
  }

  @Test
  void aFingerLikeNoRollIsInconclusive() {
    SequenceResult said =
        Card.inOrder(90).with(FingerPosition.LEFT_RING, FingerPosition.LEFT_RING, 1).answers();
    assertEquals(Verdict.INCONCLUSIVE, of(said, FingerPosition.LEFT_RING).verdict());
    assertEquals(List.of(), said.irregularities());
  }

  @Test
  void chanceLikenessOfTwoFaintFingersIsNoExchange() {
    FingerPosition a = FingerPosition.RIGHT_INDEX;
    FingerPosition b = FingerPosition.LEFT_THUMB;
    SequenceResult said =
        Card.inOrder(90).with(a, a, 2).with(b, b, 3).with(a, b, 14).with(b, a, 6).answers();
    assertEquals(List.of(), said.irregularities());
    assertTrue(
        said.answers().stream().noneMatch(one -> one.verdict() == Verdict.CONTRADICTED),
        said.toString());
  }

  @Test
  void twoFaintWitnessesOfAnExchangeSpeakForEachOther() {
    FingerPosition a = FingerPosition.RIGHT_INDEX;
    FingerPosition b = FingerPosition.LEFT_RING;
    Card card = Card.inOrder(90).with(a, a, 22).with(b, b, 24).moved(a, b);
    assertNamed(Kind.EXCHANGED, List.of(a, b), card.answers());
  }

  @Test
  void oneClearWitnessNamesAnExchangeAndLeavesTheOtherPrintInconclusive() {
    FingerPosition a = FingerPosition.RIGHT_INDEX;
    FingerPosition b = FingerPosition.LEFT_RING;
    SequenceResult said = Card.inOrder(90).with(b, b, 1).moved(a, b).answers();
    assertNamed(Kind.EXCHANGED, List.of(a, b), said);
    assertFalse(said.irregularities().get(0).mutual());
    assertEquals(Verdict.CONTRADICTED, of(said, a).verdict());
    assertEquals(Verdict.INCONCLUSIVE, of(said, b).verdict());
  }

  @Test
  void threeFingersInEachOthersBoxesAreNamedTogether() {
    FingerPosition[] three = {
      FingerPosition.RIGHT_THUMB, FingerPosition.LEFT_INDEX, FingerPosition.LEFT_LITTLE
    };
    assertNamed(Kind.ROTATED, List.of(three), Card.inOrder(60).moved(three).answers());
  }

  @Test
  void aHandThatIsOneBoxFurtherOnIsShifted() {
    FingerPosition[] hand = {
      FingerPosition.LEFT_INDEX,
      FingerPosition.LEFT_MIDDLE,
      FingerPosition.LEFT_RING,
      FingerPosition.LEFT_LITTLE
    };
    Card card = Card.inOrder(60).with(hand[2], hand[2], 3).moved(hand);
    assertNamed(Kind.SHIFTED, List.of(hand), card.answers());
  }

  @Test
  void bothHandsExchangedAreNamedSo() {
    Card card = Card.inOrder(60);
    for (int i = 0; i < 5; i++) {
      card.moved(ALL[i], ALL[i + 5]);
    }
    assertNamed(Kind.HANDS_EXCHANGED, List.of(ALL), card.answers());
  }

  @Test
  void aSecondTemplateConfirmsWhatTheFirstDoesNot() {
    FingerPosition finger = FingerPosition.LEFT_RING;
    Card card = Card.inOrder(90).with(finger, finger, 1);
    card.again[finger.ordinal()][finger.ordinal()] = 70;
    assertEquals(Reason.MATCHES_OWN_ROLL, of(card.answers(), finger).reason());
    assertEquals(Set.of(finger), card.looks);
  }

  @Test
  void aSecondTemplateOfTheRollServesToo() {
    FingerPosition finger = FingerPosition.LEFT_RING;
    Card card = Card.inOrder(90).with(finger, finger, 1);
    card.rollsAgain[finger.ordinal()][finger.ordinal()] = 70;
    assertEquals(Reason.MATCHES_OWN_ROLL, of(card.answers(), finger).reason());
  }

  @Test
  void whereAllAreConfirmedNoSecondTemplateIsMade() {
    Card card = Card.inOrder(90);
    card.answers();
    assertEquals(Set.of(), card.looks);
  }

  @Test
  void aSingleLikelyRollOfAnotherNameNeedsMoreWhereItsOwnPlainPrintIsMissing() {
    FingerPosition here = FingerPosition.RIGHT_INDEX;
    FingerPosition there = FingerPosition.RIGHT_MIDDLE;
    Card some = Card.inOrder(90).with(here, here, 2).with(here, there, 28);
    some.plains.remove(there);
    assertEquals(Verdict.INCONCLUSIVE, of(some.answers(), here).verdict());
    Card much = Card.inOrder(90).with(here, here, 2).with(here, there, 70);
    much.plains.remove(there);
    assertEquals(Verdict.CONTRADICTED, of(much.answers(), here).verdict());
  }

  @Test
  void onFewPrintsOnlyAMatchConfirms() {
    Card card = Card.inOrder(20);
    for (FingerPosition finger : List.of(ALL).subList(3, 10)) {
      card.plains.remove(finger);
      card.rolls.remove(finger);
    }
    assertTrue(
        card.answers().answers().stream().noneMatch(one -> one.verdict() == Verdict.CONFIRMED));
  }

  @Test
  void printsWithoutRollsAreInconclusiveForThat() {
    Card card = Card.inOrder(90);
    card.rolls.clear();
    for (FingerMatchResult answer : card.answers().answers()) {
      assertEquals(Reason.NO_ROLL, answer.reason());
    }
    assertEquals(List.of(), card.answers().irregularities());
  }

  @Test
  void aHigherThresholdMakesEverySimilarityWeighLess() {
    FingerPosition a = FingerPosition.RIGHT_INDEX;
    FingerPosition b = FingerPosition.LEFT_RING;
    Card card = Card.inOrder(90).with(a, a, 22).with(b, b, 24).moved(a, b);
    assertEquals(
        List.of(), SequenceCheck.check(card, Set.of(), LIMITS.withThreshold(80)).irregularities());
  }

  @Test
  void aLowerThresholdMakesNothingWeighMoreAgainstAFinger() {
    FingerPosition a = FingerPosition.RIGHT_INDEX;
    FingerPosition b = FingerPosition.LEFT_THUMB;
    Card card = Card.inOrder(90).with(a, a, 2).with(b, b, 3).with(a, b, 18).with(b, a, 6);
    SequenceResult said = SequenceCheck.check(card, Set.of(), LIMITS.withThreshold(10));
    assertEquals(List.of(), said.irregularities());
    assertTrue(
        said.answers().stream().noneMatch(one -> one.verdict() == Verdict.CONTRADICTED),
        said.toString());
  }

  @Test
  void evidenceIsInterpolatedAndStaysBeyondItsEnds() {
    MatchEvidence evidence = new MatchEvidence(new double[] {0, 10, 20}, new double[] {-1, 0, 3});
    assertEquals(-1, evidence.weight(0));
    assertEquals(-0.5, evidence.weight(5), 1e-12);
    assertEquals(1.5, evidence.weight(15), 1e-12);
    assertEquals(3, evidence.weight(20));
    assertEquals(3, evidence.weight(500));
  }
}
