package ridgeproof.corpus.impression;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import ridgeproof.corpus.finger.MasterFinger;
import ridgeproof.corpus.finger.PixelProbe;
import ridgeproof.corpus.finger.SeededRandom;
import ridgeproof.corpus.finger.TruePatternClass;
import ridgeproof.corpus.finger.TrueSingularPoint;
import ridgeproof.imagery.GrayImage;
import ridgeproof.spec.layout.FingerPosition;

class CaptureDefectTest {

  private static final MasterFinger FINGER =
      MasterFinger.grow(77, FingerPosition.RIGHT_MIDDLE, TruePatternClass.PLAIN_WHORL);
  private static final ImpressionSettings GOOD =
      ImpressionSettings.natural(21).withRotation(0).withShift(0, 0);

  private static Impression with(CaptureDefect defect, double strength) {
    return Impression.rolled(FINGER, GOOD.withDefect(defect, strength));
  }

  /** Strength 0, 0.3, 0.65 and 1 in turn move the measure the same way. */
  private static void assertGrows(CaptureDefect defect, ToDoubleFunction<Impression> measure) {
    double last = measure.applyAsDouble(with(defect, 0));
    for (double strength : new double[] {0.3, 0.65, 1}) {
      double next = measure.applyAsDouble(with(defect, strength));
      assertTrue(next > last, defect + " " + strength + ": " + next + " after " + last);
      last = next;
    }
  }

  private static double area(Impression print) {
    return print.truth().mask().areaPx();
  }

  @ParameterizedTest
  @EnumSource(CaptureDefect.class)
  void withoutStrengthNothingChanges(CaptureDefect defect) {
    assertEquals(
        PixelProbe.digest(Impression.rolled(FINGER, GOOD).image()),
        PixelProbe.digest(with(defect, 0).image()));
  }

  @ParameterizedTest
  @EnumSource(CaptureDefect.class)
  void fullStrengthIsPlainToSee(CaptureDefect defect) {
    GrayImage good = Impression.rolled(FINGER, GOOD).image();
    GrayImage bad = with(defect, 1).image();
    double sum = 0;
    for (int y = 0; y < good.height(); y++) {
      for (int x = 0; x < good.width(); x++) {
        sum += Math.abs(good.grayAt(x, y) - bad.grayAt(x, y));
      }
    }
    assertTrue(sum / (good.width() * good.height()) > 5);
  }

  @Test
  void aDryFingerLeavesAPalerPrint() {
    assertGrows(CaptureDefect.TOO_DRY, print -> PixelProbe.mean(print.image()));
  }

  @Test
  void aWetFingerLeavesADarkerPrint() {
    assertGrows(CaptureDefect.TOO_WET, print -> -PixelProbe.mean(print.image()));
  }

  @Test
  void slippageSmearsTheRidges() {
    assertGrows(CaptureDefect.SLIPPAGE, print -> -PixelProbe.sharpness(print.image()));
  }

  @Test
  void aRollNotWideEnoughLeavesANarrowerPrint() {
    assertGrows(
        CaptureDefect.ROLL_NOT_WIDE,
        print -> print.boxes().get(0).left() - print.boxes().get(0).right());
  }

  @Test
  void aFingerLiftedDuringTheRollLeavesAGap() {
    assertGrows(CaptureDefect.LIFTED_DURING_ROLL, print -> -area(print));
  }

  @Test
  void afterAFullLiftTheSkinDoesNotContinueAcrossTheGap() {
    CaptureParameters lifted =
        CaptureParameters.of(
            GOOD.withDefect(CaptureDefect.LIFTED_DURING_ROLL, 1), new SeededRandom(1, 1));
    assertTrue(Math.abs(lifted.liftJumpXPx) > 20);
  }

  @Test
  void aFingerTooHighOrTooLowShowsNoCore() {
    for (int seed = 0; seed < 6; seed++) {
      ImpressionSettings settings =
          ImpressionSettings.natural(seed).withDefect(CaptureDefect.CORE_MISSING, 1);
      List<TrueSingularPoint> points = Impression.rolled(FINGER, settings).truth().singularPoints();
      assertTrue(points.stream().noneMatch(p -> p.kind() == TrueSingularPoint.Kind.CORE));
    }
    assertGrows(CaptureDefect.CORE_MISSING, print -> -area(print));
  }

  @Test
  void aRotatedFingerIsTurnedUpTo45Degrees() {
    assertGrows(CaptureDefect.ROTATED, print -> Math.abs(print.boxes().get(0).rotationDegrees()));
    assertEquals(
        45, Math.abs(with(CaptureDefect.ROTATED, 1).boxes().get(0).rotationDegrees()), 0.01);
  }

  @Test
  void aClippedPrintReachesTheBorderAndLosesMoreThanAThird() {
    Impression good = Impression.rolled(FINGER, GOOD);
    Impression clipped = with(CaptureDefect.CLIPPED_AT_BORDER, 1);
    FingerBox box = clipped.boxes().get(0);
    assertTrue(
        box.left() == 0
            || box.top() == 0
            || box.right() == clipped.image().width() - 1
            || box.bottom() == clipped.image().height() - 1);
    assertTrue(area(clipped) < 0.67 * area(good));
  }

  @Test
  void blurTakesTheEdgesAway() {
    assertGrows(CaptureDefect.BLURRED, print -> -PixelProbe.sharpness(print.image()));
  }

  @Test
  void lowContrastBringsRidgesAndBackgroundTogether() {
    assertGrows(CaptureDefect.LOW_CONTRAST, print -> -PixelProbe.deviation(print.image()));
  }

  @Test
  void aWrongResolutionWidensTheRidgesButNotTheLabel() {
    assertGrows(
        CaptureDefect.WRONG_RESOLUTION,
        print -> PixelProbe.ridgePeriod(print.image(), print.truth().mask()));
    Impression wrong = with(CaptureDefect.WRONG_RESOLUTION, 1);
    assertEquals(500, wrong.ppi());
    assertEquals(800, wrong.image().width());
    assertTrue(PixelProbe.ridgePeriod(wrong.image(), wrong.truth().mask()) > 14);
  }

  @Test
  void aSmallContactAreaShowsFewMinutiae() {
    assertGrows(CaptureDefect.TOO_FEW_MINUTIAE, print -> -print.truth().minutiae().size());
    assertTrue(with(CaptureDefect.TOO_FEW_MINUTIAE, 1).truth().minutiae().size() < 13);
  }

  @Test
  void aLatentPrintDarkensTheBarePlatenButIsNoGroundTruth() {
    assertGrows(CaptureDefect.LATENT_GHOST, print -> -PixelProbe.mean(print.image()));
    assertEquals(
        Impression.rolled(FINGER, GOOD).truth().minutiae(),
        with(CaptureDefect.LATENT_GHOST, 1).truth().minutiae());
  }

  @Test
  void aBlankImageShowsNothingButThePlaten() {
    assertGrows(CaptureDefect.BLANK, print -> -PixelProbe.deviation(print.image()));
    Impression blank = with(CaptureDefect.BLANK, 1);
    assertTrue(PixelProbe.deviation(blank.image()) < 6);
    assertTrue(blank.boxes().isEmpty());
    assertTrue(blank.truth().minutiae().isEmpty());
    assertEquals(0, blank.truth().mask().areaPx());
  }

  @Test
  void defectsMayBeCombined() {
    Impression both =
        Impression.rolled(
            FINGER, GOOD.withDefect(CaptureDefect.ROTATED, 1).withDefect(CaptureDefect.TOO_DRY, 1));
    assertEquals(45, Math.abs(both.boxes().get(0).rotationDegrees()), 0.01);
    assertTrue(
        PixelProbe.mean(both.image()) > PixelProbe.mean(with(CaptureDefect.ROTATED, 1).image()));
  }
}
