package ridgeproof.ridges;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import ridgeproof.imagery.GrayImage;
import ridgeproof.ridges.matching.FingerMatchResult;
import ridgeproof.ridges.matching.FingerMatchResult.Verdict;
import ridgeproof.ridges.matching.Minutiae;
import ridgeproof.ridges.matching.SequenceCheck;
import ridgeproof.ridges.matching.SequenceCheckTest;
import ridgeproof.ridges.matching.SequenceError;
import ridgeproof.ridges.matching.SequenceError.Kind;
import ridgeproof.ridges.matching.SequenceLimits;
import ridgeproof.ridges.matching.SequenceResult;
import ridgeproof.ridges.quality.FingerAnalysis;
import ridgeproof.ridges.quality.FingerAnalyzer;
import ridgeproof.ridges.segmentation.Segment;
import ridgeproof.ridges.segmentation.SlapSegmenter;
import ridgeproof.spec.layout.FingerPosition;

/** What must hold on a real ink card of one person, with all its faults. */
@Tag("slow")
class ReferenceCardTest {

  private static final FingerPosition[] FINGERS = FingerPosition.values();
  private static final SequenceLimits THRESHOLD = SequenceCheckTest.LIMITS;

  private static final Map<FingerPosition, FingerAnalysis> ROLLS =
      new EnumMap<>(FingerPosition.class);
  private static final Map<FingerPosition, FingerAnalysis> PLAINS =
      new EnumMap<>(FingerPosition.class);
  private static final Map<FingerPosition, Segment> SEGMENTS = new EnumMap<>(FingerPosition.class);

  @BeforeAll
  static void analyseTheCard() {
    Map<Integer, GrayImage> images = ReferenceImages.of("type-4-tpcard.an2");
    assertEquals(14, images.size());
    images.forEach(
        (code, image) -> {
          if (code <= 10) {
            ROLLS.put(FINGERS[code - 1], FingerAnalyzer.analyse(image, 500));
          } else {
            SlapAnalysis slap = SlapAnalyzer.analyse(image, 500, FingerPosition.shownBy(code));
            slap.slap().segments().forEach(s -> SEGMENTS.put(s.position(), s));
            PLAINS.putAll(slap.fingers());
          }
        });
  }

  private static Map<FingerPosition, Minutiae> minutiae(
      Map<FingerPosition, FingerAnalysis> analyses) {
    Map<FingerPosition, Minutiae> minutiae = new EnumMap<>(FingerPosition.class);
    analyses.forEach((k, v) -> minutiae.put(k, v.measures().orElseThrow().minutiae()));
    return minutiae;
  }

  private static void assertHolds(FingerPosition position, int x, int y) {
    Segment segment = SEGMENTS.get(position);
    assertTrue(segment.box().orElseThrow().contains(x, y), segment.toString());
  }

  private static void assertNoneHolds(int x, int y) {
    SEGMENTS.values().stream()
        .filter(s -> !s.position().isThumb())
        .forEach(s -> assertFalse(s.box().orElseThrow().contains(x, y), s.toString()));
  }

  @Test
  void everyPlainFingerIsFoundAtItsPrint() {
    assertEquals(10, SEGMENTS.size());
    assertHolds(FingerPosition.RIGHT_INDEX, 263, 624);
    assertHolds(FingerPosition.RIGHT_MIDDLE, 533, 269);
    assertHolds(FingerPosition.RIGHT_RING, 945, 195);
    assertHolds(FingerPosition.RIGHT_LITTLE, 1369, 653);
    assertHolds(FingerPosition.LEFT_LITTLE, 334, 760);
    assertHolds(FingerPosition.LEFT_RING, 610, 305);
    assertHolds(FingerPosition.LEFT_MIDDLE, 968, 173);
    assertHolds(FingerPosition.LEFT_INDEX, 1307, 357);
    assertHolds(FingerPosition.RIGHT_THUMB, 204, 528);
    assertHolds(FingerPosition.LEFT_THUMB, 264, 588);
  }

  @Test
  void nextJointsAreInNoBox() {
    assertNoneHolds(653, 802);
    assertNoneHolds(1031, 745);
    assertNoneHolds(599, 800);
    assertNoneHolds(968, 650);
    assertNoneHolds(1405, 850);
  }

  @Test
  void whatTheEdgesCutIsSaid() {
    assertTrue(
        SEGMENTS.get(FingerPosition.LEFT_MIDDLE).doubts().contains(Segment.Doubt.CUT_AT_TOP));
    assertTrue(
        SEGMENTS.get(FingerPosition.RIGHT_THUMB).doubts().contains(Segment.Doubt.CUT_AT_SIDE));
    assertEquals(List.of(), SEGMENTS.get(FingerPosition.LEFT_INDEX).doubts());
  }

  @Test
  void everyPrintHasThePeriodOfAnAdult() {
    for (FingerAnalysis analysis : ROLLS.values()) {
      double period = analysis.measures().orElseThrow().flow().periodMm();
      assertTrue(period > 0.4 && period < 0.6, "period " + period);
    }
  }

  @Test
  void rollsAreBroaderThanPlainPrints() {
    for (FingerPosition position : FINGERS) {
      double roll = ROLLS.get(position).measures().orElseThrow().extent().widthMm();
      double plain = PLAINS.get(position).measures().orElseThrow().extent().widthMm();
      assertTrue(roll > 1.2 * plain, position + " " + roll + " " + plain);
    }
  }

  @Test
  void noFingerIsContradictedAndMostAreConfirmed() {
    SequenceResult answers = SequenceCheck.check(minutiae(ROLLS), minutiae(PLAINS), THRESHOLD);
    assertEquals(List.of(), answers.irregularities());
    assertEquals(10, answers.answers().size());
    long confirmed =
        answers.answers().stream().filter(a -> a.verdict() == Verdict.CONFIRMED).count();
    assertTrue(confirmed >= 5, answers.toString());
    assertTrue(
        answers.answers().stream().noneMatch(a -> a.verdict() == Verdict.CONTRADICTED),
        answers.toString());
  }

  @Test
  void anyTwoRollsExchangedAreNamedOrInconclusiveButNeverConfirmed() {
    Map<FingerPosition, Minutiae> rolls = minutiae(ROLLS);
    Map<FingerPosition, Minutiae> plains = minutiae(PLAINS);
    int named = 0;
    for (int a = 0; a < FINGERS.length; a++) {
      for (int b = a + 1; b < FINGERS.length; b++) {
        Map<FingerPosition, Minutiae> exchanged = new EnumMap<>(rolls);
        exchanged.put(FINGERS[a], rolls.get(FINGERS[b]));
        exchanged.put(FINGERS[b], rolls.get(FINGERS[a]));
        SequenceResult answers = SequenceCheck.check(exchanged, plains, THRESHOLD);
        Set<FingerPosition> pair = Set.of(FINGERS[a], FINGERS[b]);
        for (FingerMatchResult answer : answers.answers()) {
          assertTrue(
              pair.contains(answer.position())
                  ? answer.verdict() != Verdict.CONFIRMED
                  : answer.verdict() != Verdict.CONTRADICTED,
              pair + " " + answer);
        }
        for (SequenceError irregularity : answers.irregularities()) {
          assertEquals(pair, new HashSet<>(irregularity.positions()));
          assertEquals(
              FINGERS[a].isThumb() && FINGERS[b].isThumb() ? Kind.THUMBS_EXCHANGED : Kind.EXCHANGED,
              irregularity.kind());
        }
        named += answers.irregularities().size();
      }
    }
    System.out.println(named + " of 45 exchanges named");
    assertTrue(named >= 25, named + " named");
  }

  @Test
  void rowsOfRollsExchangedAreHandsExchanged() {
    Map<FingerPosition, Minutiae> rolls = minutiae(ROLLS);
    Map<FingerPosition, Minutiae> exchanged = new EnumMap<>(FingerPosition.class);
    rolls.forEach((k, v) -> exchanged.put(FINGERS[(k.ordinal() + 5) % 10], v));
    assertHandsExchanged(SequenceCheck.check(exchanged, minutiae(PLAINS), THRESHOLD));
  }

  @Test
  void slapsUnderEachOthersNameAreHandsExchanged() {
    Map<FingerPosition, Minutiae> plains = minutiae(PLAINS);
    Map<FingerPosition, Minutiae> exchanged = new EnumMap<>(plains);
    List<FingerPosition> right = FingerPosition.shownBy(13);
    List<FingerPosition> left = FingerPosition.shownBy(14);
    for (int i = 0; i < 4; i++) {
      exchanged.put(right.get(i), plains.get(left.get(i)));
      exchanged.put(left.get(i), plains.get(right.get(i)));
    }
    assertHandsExchanged(SequenceCheck.check(minutiae(ROLLS), exchanged, THRESHOLD));
  }

  private static void assertHandsExchanged(SequenceResult answers) {
    assertEquals(
        List.of(Kind.HANDS_EXCHANGED),
        answers.irregularities().stream().map(SequenceError::kind).toList(),
        answers.toString());
  }

  @Test
  void oneFingerRolledTwiceIsNamed() {
    Map<FingerPosition, Minutiae> rolls = minutiae(ROLLS);
    rolls.put(FingerPosition.LEFT_RING, rolls.get(FingerPosition.LEFT_MIDDLE));
    SequenceResult answers = SequenceCheck.check(rolls, minutiae(PLAINS), THRESHOLD);
    SequenceError twice =
        answers.irregularities().stream()
            .filter(i -> i.kind() == Kind.ROLLED_TWICE)
            .findFirst()
            .orElseThrow();
    assertEquals(List.of(FingerPosition.LEFT_MIDDLE, FingerPosition.LEFT_RING), twice.positions());
  }

  @Test
  void missingPrintsAreInconclusiveWithAReason() {
    Map<FingerPosition, Minutiae> rolls = minutiae(ROLLS);
    Map<FingerPosition, Minutiae> plains = minutiae(PLAINS);
    rolls.remove(FingerPosition.LEFT_INDEX);
    plains.remove(FingerPosition.LEFT_MIDDLE);
    SequenceResult answers = SequenceCheck.check(rolls, plains, THRESHOLD);
    FingerMatchResult noRoll = answers.answers().get(FingerPosition.LEFT_INDEX.ordinal());
    FingerMatchResult noPlain = answers.answers().get(FingerPosition.LEFT_MIDDLE.ordinal());
    assertEquals(FingerMatchResult.Reason.NO_ROLL, noRoll.reason());
    assertEquals(Verdict.INCONCLUSIVE, noRoll.verdict());
    assertEquals(FingerMatchResult.Reason.NO_PLAIN_PRINT, noPlain.reason());
    assertEquals(Verdict.INCONCLUSIVE, noPlain.verdict());
  }

  @Test
  void theSlapsOfTheOtherTransactionAreFoundAlike() {
    ReferenceImages.of("type-4-slaps.an2")
        .forEach(
            (code, image) ->
                SlapSegmenter.segment(image, 500, FingerPosition.shownBy(code))
                    .segments()
                    .forEach(s -> assertEquals(SEGMENTS.get(s.position()), s)));
  }
}
