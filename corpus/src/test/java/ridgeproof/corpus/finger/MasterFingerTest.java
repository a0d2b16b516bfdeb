package ridgeproof.corpus.finger;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import ridgeproof.corpus.impression.Impression;
import ridgeproof.corpus.impression.ImpressionSettings;

class MasterFingerTest {

  @Test
  void theSameSeedGrowsTheSameSkinOnEveryMachine() {
    MasterFinger finger = MasterFinger.grow(42, FingerDigit.RIGHT_INDEX);
    assertArrayEquals(finger.relief(), MasterFinger.grow(42, FingerDigit.RIGHT_INDEX).relief());
    assertEquals("a6e982e18807ba0e", Pixels.digest(finger.relief()));
  }

  @Test
  void noTwoFingersShareTheirSkin() {
    Set<String> skins = new HashSet<>();
    for (long seed = 0; seed < 3; seed++) {
      for (FingerDigit digit : FingerDigit.values()) {
        skins.add(Pixels.digest(MasterFinger.grow(seed, digit).relief()));
      }
    }
    assertEquals(30, skins.size());
  }

  @ParameterizedTest
  @EnumSource(FingerDigit.class)
  void patternClassesAreDrawnAsOftenAsTheyAreMetOnThatFinger(FingerDigit digit) {
    Map<PatternClass, Integer> counts = new EnumMap<>(PatternClass.class);
    int draws = 20_000;
    for (int seed = 0; seed < draws; seed++) {
      counts.merge(
          PatternClass.draw(digit, new Dice(seed, 100 + digit.position())), 1, Integer::sum);
    }
    for (PatternClass pattern : PatternClass.values()) {
      double share = counts.getOrDefault(pattern, 0) / (double) draws;
      assertEquals(pattern.frequencyOn(digit), share, 0.012, pattern.name());
    }
  }

  @Test
  void overAllFingersLoopsAreTwoThirdsWhorlsThreeTenthsAndArchesOneTwentieth() {
    double loops = 0;
    double whorls = 0;
    double arches = 0;
    for (FingerDigit digit : FingerDigit.values()) {
      loops +=
          PatternClass.LEFT_LOOP.frequencyOn(digit) + PatternClass.RIGHT_LOOP.frequencyOn(digit);
      whorls +=
          PatternClass.PLAIN_WHORL.frequencyOn(digit) + PatternClass.DOUBLE_LOOP.frequencyOn(digit);
      arches +=
          PatternClass.PLAIN_ARCH.frequencyOn(digit) + PatternClass.TENTED_ARCH.frequencyOn(digit);
    }
    assertEquals(0.65, loops / 10, 0.03);
    assertEquals(0.30, whorls / 10, 0.03);
    // 5 to 6.6 % are published.
    assertEquals(0.058, arches / 10, 0.008);
  }

  @Test
  void mostLoopsOpenTowardsTheLittleFinger() {
    for (FingerDigit digit : FingerDigit.values()) {
      PatternClass ulnar =
          digit.hand() == Hand.RIGHT ? PatternClass.RIGHT_LOOP : PatternClass.LEFT_LOOP;
      PatternClass radial =
          ulnar == PatternClass.RIGHT_LOOP ? PatternClass.LEFT_LOOP : PatternClass.RIGHT_LOOP;
      assertTrue(ulnar.frequencyOn(digit) > radial.frequencyOn(digit), digit.name());
    }
  }

  @ParameterizedTest
  @EnumSource(PatternClass.class)
  void eachPatternHasItsCoresAndDeltas(PatternClass pattern) {
    int expected =
        switch (pattern) {
          case PLAIN_ARCH -> 0;
          case TENTED_ARCH, LEFT_LOOP, RIGHT_LOOP -> 1;
          case PLAIN_WHORL, DOUBLE_LOOP -> 2;
        };
    MasterFinger finger = MasterFinger.grow(5, FingerDigit.LEFT_MIDDLE, pattern);
    for (SingularPoint.Kind kind : SingularPoint.Kind.values()) {
      long count =
          finger.groundTruth().singularPoints().stream().filter(p -> p.kind() == kind).count();
      assertEquals(expected, count, kind.name());
    }
  }

  @ParameterizedTest
  @EnumSource(PatternClass.class)
  void minutiaeOfBothKindsLieInsideTheMask(PatternClass pattern) {
    GroundTruth truth = MasterFinger.grow(6, FingerDigit.LEFT_RING, pattern).groundTruth();
    int endings = 0;
    for (Minutia minutia : truth.minutiae()) {
      assertTrue(truth.mask().contains(minutia.x(), minutia.y()));
      assertTrue(minutia.angleDegrees() >= 0 && minutia.angleDegrees() < 360);
      endings += minutia.kind() == Minutia.Kind.ENDING ? 1 : 0;
    }
    double share = endings / (double) truth.minutiae().size();
    assertTrue(share > 0.25 && share < 0.75, "endings are " + share);
  }

  @Test
  void anglesPointAlongTheEndingRidgeAndIntoTheForkingValley() {
    int right = 0;
    int all = 0;
    for (PatternClass pattern : PatternClass.values()) {
      MasterFinger finger = MasterFinger.grow(7, FingerDigit.RIGHT_RING, pattern);
      int width = finger.anatomy().canvasWidth();
      for (Minutia minutia : finger.groundTruth().minutiae()) {
        double radians = Math.toRadians(minutia.angleDegrees());
        int difference = 0;
        for (int step = 3; step <= 7; step++) {
          int dx = (int) Math.rint(step * Math.cos(radians));
          int dy = (int) Math.rint(-step * Math.sin(radians));
          int at = (int) minutia.y() * width + (int) minutia.x();
          int apart = dy * width + dx;
          difference += finger.relief()[at + apart] - finger.relief()[at - apart];
        }
        all++;
        right += difference > 0 == (minutia.kind() == Minutia.Kind.ENDING) ? 1 : 0;
      }
    }
    assertTrue(right > 0.9 * all, right + " of " + all);
  }

  @Test
  void ridgesAreAboutNinePixelsApart() {
    double sum = 0;
    for (int seed = 0; seed < 10; seed++) {
      MasterFinger finger = MasterFinger.grow(seed, FingerDigit.values()[seed]);
      Impression print = Impression.rolled(finger, ImpressionSettings.natural(seed));
      double period = Pixels.ridgePeriod(print.image(), print.truth().mask());
      assertEquals(finger.ridgePeriodPx(), period, 0.12 * finger.ridgePeriodPx());
      sum += period;
    }
    assertEquals(9, sum / 10, 0.7);
  }

  @Test
  void anotherPatternOnTheSameFingerIsAnotherSkin() {
    assertNotEquals(
        Pixels.digest(
            MasterFinger.grow(1, FingerDigit.LEFT_LITTLE, PatternClass.LEFT_LOOP).relief()),
        Pixels.digest(
            MasterFinger.grow(1, FingerDigit.LEFT_LITTLE, PatternClass.RIGHT_LOOP).relief()));
  }
}
