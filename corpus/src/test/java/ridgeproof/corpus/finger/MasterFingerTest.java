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
import ridgeproof.spec.layout.FingerPosition;
import ridgeproof.spec.layout.FingerPosition.Hand;

class MasterFingerTest {

  @Test
  void theSameSeedGrowsTheSameSkinOnEveryMachine() {
    MasterFinger finger = MasterFinger.grow(42, FingerPosition.RIGHT_INDEX);
    assertArrayEquals(finger.relief(), MasterFinger.grow(42, FingerPosition.RIGHT_INDEX).relief());
    assertEquals("a6e982e18807ba0e", PixelProbe.digest(finger.relief()));
  }

  @Test
  void noTwoFingersShareTheirSkin() {
    Set<String> skins = new HashSet<>();
    for (long seed = 0; seed < 3; seed++) {
      for (FingerPosition digit : FingerPosition.values()) {
        skins.add(PixelProbe.digest(MasterFinger.grow(seed, digit).relief()));
      }
    }
    assertEquals(30, skins.size());
  }

  @ParameterizedTest
  @EnumSource(FingerPosition.class)
  void patternClassesAreDrawnAsOftenAsTheyAreMetOnThatFinger(FingerPosition digit) {
    Map<TruePatternClass, Integer> counts = new EnumMap<>(TruePatternClass.class);
    int draws = 20_000;
    for (int seed = 0; seed < draws; seed++) {
      counts.merge(
          TruePatternClass.draw(digit, new SeededRandom(seed, 100 + digit.code())),
          1,
          Integer::sum);
    }
    for (TruePatternClass pattern : TruePatternClass.values()) {
      double share = counts.getOrDefault(pattern, 0) / (double) draws;
      assertEquals(pattern.frequencyOn(digit), share, 0.012, pattern.name());
    }
  }

  @Test
  void overAllFingersLoopsAreTwoThirdsWhorlsThreeTenthsAndArchesOneTwentieth() {
    double loops = 0;
    double whorls = 0;
    double arches = 0;
    for (FingerPosition digit : FingerPosition.values()) {
      loops +=
          TruePatternClass.LEFT_LOOP.frequencyOn(digit)
              + TruePatternClass.RIGHT_LOOP.frequencyOn(digit);
      whorls +=
          TruePatternClass.PLAIN_WHORL.frequencyOn(digit)
              + TruePatternClass.DOUBLE_LOOP.frequencyOn(digit);
      arches +=
          TruePatternClass.PLAIN_ARCH.frequencyOn(digit)
              + TruePatternClass.TENTED_ARCH.frequencyOn(digit);
    }
    assertEquals(0.65, loops / 10, 0.03);
    assertEquals(0.30, whorls / 10, 0.03);
    // 5 to 6.6 % are published.
    assertEquals(0.058, arches / 10, 0.008);
  }

  @Test
  void mostLoopsOpenTowardsTheLittleFinger() {
    for (FingerPosition digit : FingerPosition.values()) {
      TruePatternClass ulnar =
          digit.hand() == Hand.RIGHT ? TruePatternClass.RIGHT_LOOP : TruePatternClass.LEFT_LOOP;
      TruePatternClass radial =
          ulnar == TruePatternClass.RIGHT_LOOP
              ? TruePatternClass.LEFT_LOOP
              : TruePatternClass.RIGHT_LOOP;
      assertTrue(ulnar.frequencyOn(digit) > radial.frequencyOn(digit), digit.name());
    }
  }

  @ParameterizedTest
  @EnumSource(TruePatternClass.class)
  void eachPatternHasItsCoresAndDeltas(TruePatternClass pattern) {
    int expected =
        switch (pattern) {
          case PLAIN_ARCH -> 0;
          case TENTED_ARCH, LEFT_LOOP, RIGHT_LOOP -> 1;
          case PLAIN_WHORL, DOUBLE_LOOP -> 2;
        };
    MasterFinger finger = MasterFinger.grow(5, FingerPosition.LEFT_MIDDLE, pattern);
    for (TrueSingularPoint.Kind kind : TrueSingularPoint.Kind.values()) {
      long count =
          finger.groundTruth().singularPoints().stream().filter(p -> p.kind() == kind).count();
      assertEquals(expected, count, kind.name());
    }
  }

  @ParameterizedTest
  @EnumSource(TruePatternClass.class)
  void minutiaeOfBothKindsLieInsideTheMask(TruePatternClass pattern) {
    GroundTruth truth = MasterFinger.grow(6, FingerPosition.LEFT_RING, pattern).groundTruth();
    int endings = 0;
    for (TrueMinutia minutia : truth.minutiae()) {
      assertTrue(truth.mask().contains(minutia.x(), minutia.y()));
      assertTrue(minutia.angleDegrees() >= 0 && minutia.angleDegrees() < 360);
      endings += minutia.kind() == TrueMinutia.Kind.ENDING ? 1 : 0;
    }
    double share = endings / (double) truth.minutiae().size();
    assertTrue(share > 0.25 && share < 0.75, "endings are " + share);
  }

  @Test
  void anglesPointAlongTheEndingRidgeAndIntoTheForkingValley() {
    int right = 0;
    int all = 0;
    for (TruePatternClass pattern : TruePatternClass.values()) {
      MasterFinger finger = MasterFinger.grow(7, FingerPosition.RIGHT_RING, pattern);
      int width = finger.anatomy().canvasWidth();
      for (TrueMinutia minutia : finger.groundTruth().minutiae()) {
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
        right += difference > 0 == (minutia.kind() == TrueMinutia.Kind.ENDING) ? 1 : 0;
      }
    }
    assertTrue(right > 0.9 * all, right + " of " + all);
  }

  @Test
  void ridgesAreAboutNinePixelsApart() {
    double sum = 0;
    for (int seed = 0; seed < 10; seed++) {
      MasterFinger finger = MasterFinger.grow(seed, FingerPosition.values()[seed]);
      Impression print = Impression.rolled(finger, ImpressionSettings.natural(seed));
      double period = PixelProbe.ridgePeriod(print.image(), print.truth().mask());
      assertEquals(finger.ridgePeriodPx(), period, 0.12 * finger.ridgePeriodPx());
      sum += period;
    }
    assertEquals(9, sum / 10, 0.7);
  }

  @Test
  void anotherPatternOnTheSameFingerIsAnotherSkin() {
    assertNotEquals(
        PixelProbe.digest(
            MasterFinger.grow(1, FingerPosition.LEFT_LITTLE, TruePatternClass.LEFT_LOOP).relief()),
        PixelProbe.digest(
            MasterFinger.grow(1, FingerPosition.LEFT_LITTLE, TruePatternClass.RIGHT_LOOP)
                .relief()));
  }
}
