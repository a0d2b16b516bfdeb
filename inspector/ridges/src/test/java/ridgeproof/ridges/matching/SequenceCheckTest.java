package ridgeproof.ridges.matching;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import ridgeproof.imagery.GrayImage;
import ridgeproof.ridges.map.Drawn;
import ridgeproof.ridges.map.RotatedBox;
import ridgeproof.ridges.matching.FingerMatchResult.Reason;
import ridgeproof.ridges.matching.FingerMatchResult.Verdict;
import ridgeproof.ridges.matching.SequenceError.Kind;
import ridgeproof.ridges.quality.FingerAnalyzer;
import ridgeproof.spec.layout.FingerPosition;

public class SequenceCheckTest {

  public static final SequenceLimits LIMITS =
      new SequenceLimits(
          40,
          40,
          new MatchEvidence(
              new double[] {0, 5, 10, 20, 30, 40, 55},
              new double[] {-1.64, -1.24, -0.81, 0.14, 1.23, 2.36, 4}),
          0.75,
          3,
          1,
          3,
          0.5,
          8);

  private static final FingerPosition THUMB = FingerPosition.RIGHT_THUMB;
  private static final FingerPosition INDEX = FingerPosition.RIGHT_INDEX;
  private static final FingerPosition MIDDLE = FingerPosition.RIGHT_MIDDLE;
  private static final FingerPosition OTHER_THUMB = FingerPosition.LEFT_THUMB;
  private static final List<FingerPosition> FINGERS = List.of(THUMB, INDEX, MIDDLE, OTHER_THUMB);

  private static final Map<FingerPosition, Minutiae> ROLLS = new EnumMap<>(FingerPosition.class);
  private static final Map<FingerPosition, Minutiae> PLAINS = new EnumMap<>(FingerPosition.class);

  @BeforeAll
  static void drawTwoImpressionsOfEachFinger() {
    for (FingerPosition finger : FINGERS) {
      GrayImage roll =
          Drawn.print(
              340,
              420,
              new double[] {150 + 10 * finger.indexOnHand(), 180},
              new double[] {240, 300},
              finger.code());
      ROLLS.put(finger, minutiae(roll));
      PLAINS.put(finger, minutiae(plain(roll, finger.code())));
    }
  }

  private static Minutiae minutiae(GrayImage image) {
    return FingerAnalyzer.analyse(image, 500).measures().orElseThrow().minutiae();
  }

  /** A smaller part, turned a little and with grain. */
  private static GrayImage plain(GrayImage roll, long seed) {
    GrayImage turned = new RotatedBox(165, 215, 250, 320, 6).cut(roll);
    byte[] pixels = turned.toArray();
    Random random = new Random(seed);
    for (int i = 0; i < pixels.length; i++) {
      double gray = (pixels[i] & 0xFF) + 15 * random.nextGaussian();
      pixels[i] = (byte) Math.max(0, Math.min(255, Math.round(gray)));
    }
    return GrayImage.owning(turned.width(), turned.height(), pixels);
  }

  private static SequenceResult check(
      Map<FingerPosition, Minutiae> rolls, Map<FingerPosition, Minutiae> plains) {
    return SequenceCheck.check(rolls, plains, LIMITS);
  }

  private static FingerMatchResult answer(SequenceResult answers, FingerPosition position) {
    return answers.answers().stream()
        .filter(a -> a.position() == position)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aPrintAmongFewerThanThereAreFingersContradictsNothing() {
    Map<FingerPosition, Minutiae> exchanged = new EnumMap<>(PLAINS);
    exchanged.put(INDEX, PLAINS.get(MIDDLE));
    SequenceResult certain = SequenceCheck.check(ROLLS, exchanged, LIMITS);
    SequenceResult uncertain =
        SequenceCheck.check(ROLLS, exchanged, Set.of(INDEX), SecondLook.NONE, LIMITS);
    assertEquals(Verdict.CONTRADICTED, answer(certain, INDEX).verdict());
    assertEquals(Verdict.INCONCLUSIVE, answer(uncertain, INDEX).verdict());
    assertEquals(Reason.PLACE_UNCERTAIN, answer(uncertain, INDEX).reason());
  }

  @Test
  void printsInOrderAreConfirmed() {
    SequenceResult answers = check(ROLLS, PLAINS);
    assertEquals(List.of(), answers.irregularities());
    for (FingerMatchResult answer : answers.answers()) {
      assertEquals(Verdict.CONFIRMED, answer.verdict(), answer.toString());
      assertEquals(Reason.MATCHES_OWN_ROLL, answer.reason());
    }
  }

  @Test
  void twoFingersExchangedAreNamedByBoth() {
    Map<FingerPosition, Minutiae> rolls = new EnumMap<>(ROLLS);
    rolls.put(INDEX, ROLLS.get(MIDDLE));
    rolls.put(MIDDLE, ROLLS.get(INDEX));
    SequenceResult answers = check(rolls, PLAINS);
    assertEquals(1, answers.irregularities().size());
    SequenceError exchange = answers.irregularities().get(0);
    assertEquals(Kind.EXCHANGED, exchange.kind());
    assertEquals(List.of(INDEX, MIDDLE), exchange.positions());
    assertTrue(exchange.mutual());
    assertEquals(Verdict.CONTRADICTED, answer(answers, INDEX).verdict());
    assertEquals(Verdict.CONFIRMED, answer(answers, THUMB).verdict());
  }

  @Test
  void thumbsExchangedAreNamedSo() {
    Map<FingerPosition, Minutiae> plains = new EnumMap<>(PLAINS);
    plains.put(THUMB, PLAINS.get(OTHER_THUMB));
    plains.put(OTHER_THUMB, PLAINS.get(THUMB));
    SequenceResult answers = check(ROLLS, plains);
    assertEquals(Kind.THUMBS_EXCHANGED, answers.irregularities().get(0).kind());
  }

  @Test
  void anExchangeThatOneHalfTellsIsNamedAsOneSided() {
    Map<FingerPosition, Minutiae> rolls = new EnumMap<>(ROLLS);
    rolls.put(INDEX, ROLLS.get(MIDDLE));
    rolls.put(MIDDLE, ROLLS.get(INDEX));
    Map<FingerPosition, Minutiae> plains = new EnumMap<>(PLAINS);
    plains.remove(MIDDLE);
    SequenceResult answers = check(rolls, plains);
    assertEquals(Verdict.CONTRADICTED, answer(answers, INDEX).verdict());
    assertEquals(Reason.NO_PLAIN_PRINT, answer(answers, MIDDLE).reason());
    assertEquals(Kind.EXCHANGED, answers.irregularities().get(0).kind());
    assertTrue(!answers.irregularities().get(0).mutual());
  }

  @Test
  void onePlainFingerGivenTwiceIsNamedAndFoundElsewhere() {
    Map<FingerPosition, Minutiae> plains = new EnumMap<>(PLAINS);
    plains.put(INDEX, PLAINS.get(MIDDLE));
    List<Kind> kinds =
        check(ROLLS, plains).irregularities().stream().map(SequenceError::kind).toList();
    assertTrue(kinds.contains(Kind.PLAIN_TWICE), kinds.toString());
    assertTrue(kinds.contains(Kind.FOUND_ELSEWHERE), kinds.toString());
  }

  @Test
  void oneFingerRolledTwiceLeavesItsPlainPrintInconclusive() {
    Map<FingerPosition, Minutiae> rolls = new EnumMap<>(ROLLS);
    rolls.put(INDEX, ROLLS.get(MIDDLE));
    SequenceResult answers = check(rolls, PLAINS);
    assertEquals(Reason.MATCHES_SEVERAL_ROLLS, answer(answers, MIDDLE).reason());
    assertEquals(Verdict.INCONCLUSIVE, answer(answers, MIDDLE).verdict());
    assertTrue(answers.irregularities().stream().anyMatch(i -> i.kind() == Kind.ROLLED_TWICE));
  }

  @Test
  void aFingerOfSomebodyElseIsInconclusive() {
    Map<FingerPosition, Minutiae> plains = new EnumMap<>(PLAINS);
    plains.put(
        INDEX,
        minutiae(Drawn.print(340, 420, new double[] {140, 170}, new double[] {250, 310}, 77)));
    SequenceResult answers = check(ROLLS, plains);
    assertEquals(Verdict.INCONCLUSIVE, answer(answers, INDEX).verdict());
    assertEquals(Reason.MATCHES_NO_ROLL, answer(answers, INDEX).reason());
    assertEquals(List.of(), answers.irregularities());
  }

  @Test
  void aPrintWithoutMinutiaeIsInconclusiveForThat() {
    Map<FingerPosition, Minutiae> plains = new EnumMap<>(PLAINS);
    plains.put(INDEX, minutiae(Drawn.stripes(250, 320, 9, 20, 0.5)));
    assertEquals(Reason.TOO_FEW_MINUTIAE, answer(check(ROLLS, plains), INDEX).reason());
  }

  @Test
  void aThresholdOutOfReachConfirmsNothing() {
    SequenceResult answers = SequenceCheck.check(ROLLS, PLAINS, LIMITS.withThreshold(1e9));
    assertTrue(answers.answers().stream().allMatch(a -> a.verdict() == Verdict.INCONCLUSIVE));
  }

  @Test
  void nothingToCompareGivesNoAnswers() {
    SequenceResult answers = check(Map.of(), Map.of());
    assertEquals(List.of(), answers.answers());
    assertEquals(List.of(), answers.irregularities());
  }
}
