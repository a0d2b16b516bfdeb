package ridgeproof.ridges.quality;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import ridgeproof.imagery.GrayImage;
import ridgeproof.ridges.map.Drawn;
import ridgeproof.ridges.map.Smoothing;

class QualityMetricTest {

  private static final GrayImage PRINT =
      Drawn.print(320, 420, new double[] {170, 180}, new double[] {230, 300}, 1);

  private static double value(QualityMetric measure, GrayImage image) {
    return measure.of(FingerAnalyzer.analyse(image, 500)).orElseThrow();
  }

  private static GrayImage filledWith(
      GrayImage image, int left, int top, int right, int bottom, int level) {
    byte[] pixels = image.toArray();
    for (int y = top; y < bottom; y++) {
      Arrays.fill(pixels, y * image.width() + left, y * image.width() + right, (byte) level);
    }
    return GrayImage.owning(image.width(), image.height(), pixels);
  }

  private static GrayImage blurred(GrayImage image) {
    byte[] pixels = image.toArray();
    for (int pass = 0; pass < 3; pass++) {
      pixels = Smoothing.pixels(pixels, image.width(), image.height());
    }
    return GrayImage.owning(image.width(), image.height(), pixels);
  }

  @Test
  void everyKeyIsItsOwn() {
    List<String> keys = Stream.of(QualityMetric.values()).map(QualityMetric::key).toList();
    assertEquals(keys.size(), keys.stream().collect(Collectors.toSet()).size());
    assertEquals(Optional.of(QualityMetric.PERIOD), QualityMetric.ofKey("ridge-period"));
    assertEquals(Optional.empty(), QualityMetric.ofKey("no-such-measure"));
  }

  @Test
  void anImageWithoutPrintHasNoMeasures() {
    FingerAnalysis blank = FingerAnalyzer.analyse(Drawn.blank(400, 400, 255), 500);
    for (QualityMetric measure : QualityMetric.values()) {
      assertEquals(OptionalDouble.empty(), measure.of(blank), measure.key());
    }
  }

  @Test
  void aPrintWithoutCoreHasNoWayFromCoreToBorder() {
    FingerAnalysis stripes = FingerAnalyzer.analyse(Drawn.stripes(320, 400, 9, 0, 0.5), 500);
    assertEquals(OptionalDouble.empty(), QualityMetric.CORE_TO_BORDER.of(stripes));
    assertEquals(0, QualityMetric.CORES.of(stripes).orElseThrow());
    assertTrue(QualityMetric.CORE_TO_BORDER.of(FingerAnalyzer.analyse(PRINT, 500)).isPresent());
  }

  @Test
  void theWidthOfARollIsHeldAgainstThePlainPrint() {
    FingerAnalysis roll = FingerAnalyzer.analyse(Drawn.stripes(600, 500, 9, 0, 0.5), 500);
    FingerAnalysis plain = FingerAnalyzer.analyse(Drawn.stripes(300, 500, 9, 0, 0.5), 500);
    FingerAnalysis none = FingerAnalyzer.analyse(Drawn.blank(300, 500, 255), 500);
    double ratio =
        QualityMetric.WIDTH.of(roll).orElseThrow() / QualityMetric.WIDTH.of(plain).orElseThrow();
    assertEquals(ratio, QualityMetric.rollToPlain(roll, plain).orElseThrow());
    assertTrue(ratio > 1.6 && ratio < 2.2, "ratio " + ratio);
    assertEquals(OptionalDouble.empty(), QualityMetric.rollToPlain(roll, none));
    assertEquals(OptionalDouble.empty(), QualityMetric.ROLL_TO_PLAIN_WIDTH.of(roll));
  }

  @Test
  void aStripWithoutRidgesFromTopToBottomIsAGap() {
    GrayImage whole = Drawn.stripes(600, 500, 9, 0, 0.5);
    GrayImage parted = filledWith(whole, 260, 0, 340, 500, Drawn.PAPER);
    assertTrue(value(QualityMetric.GAP_SHARE, whole) < 0.1);
    assertTrue(value(QualityMetric.GAP_SHARE, parted) > 0.7);
    assertEquals(80 * 25.4 / 500, value(QualityMetric.GAP_WIDTH, parted), 1.3);
  }

  @Test
  void aHoleIsNoGap() {
    GrayImage holed = filledWith(Drawn.stripes(600, 500, 9, 0, 0.5), 260, 210, 340, 290, 255);
    assertTrue(value(QualityMetric.GAP_SHARE, holed) < 0.35);
  }

  @Test
  void blurTakesDetailAndModulationAway() {
    GrayImage sharp = noisy(PRINT);
    GrayImage soft = blurred(sharp);
    assertTrue(value(QualityMetric.GRAIN, soft) < 0.9 * value(QualityMetric.GRAIN, sharp));
    assertTrue(
        value(QualityMetric.MODULATION, soft) < 0.5 * value(QualityMetric.MODULATION, sharp));
  }

  private static GrayImage noisy(GrayImage image) {
    byte[] noise = Drawn.noise(image.width(), image.height(), 4).toArray();
    byte[] pixels = image.toArray();
    for (int i = 0; i < pixels.length; i++) {
      int level = (pixels[i] & 0xFF) + (noise[i] >> 3);
      pixels[i] = (byte) Math.max(0, Math.min(255, level));
    }
    return GrayImage.owning(image.width(), image.height(), pixels);
  }

  @Test
  void ridgesThatFadeInOnePartAreFaintThere() {
    GrayImage even = Drawn.stripes(600, 500, 9, 0, 0.5);
    byte[] pixels = even.toArray();
    for (int y = 0; y < 500; y++) {
      for (int x = 0; x < 250; x++) {
        int at = y * 600 + x;
        pixels[at] = (byte) (90 + ((pixels[at] & 0xFF) - 90) * 45 / 100);
      }
    }
    GrayImage half = GrayImage.owning(600, 500, pixels);
    assertTrue(value(QualityMetric.FAINT_SHARE, even) < 0.05);
    assertTrue(value(QualityMetric.FAINT_SHARE, half) > 0.2);
  }

  @ParameterizedTest
  @ValueSource(doubles = {-35, -20, 0, 20, 35})
  void aBroadRollTellsItsLeanByItsSides(double degrees) {
    byte[] pixels = Drawn.blank(520, 560, Drawn.PAPER).toArray();
    byte[] ridges = Drawn.stripes(1600, 1600, 9, 10, 0.5).toArray();
    for (int y = 30; y < 530; y++) {
      System.arraycopy(ridges, (y + 500) * 1600 + 550, pixels, y * 520 + 40, 440);
    }
    GrayImage turned = Drawn.turned(GrayImage.owning(520, 560, pixels), degrees);
    RotationMeasure rotation =
        FingerAnalyzer.analyse(turned, 500).measures().orElseThrow().rotation();
    assertEquals(degrees, rotation.degrees(), 6);
    assertTrue(rotation.confidence() > 0.3, rotation.toString());
  }

  @Test
  void theCoresOfAHandCountTogetherAndNoneCountsAsAtTheBorder() {
    FingerAnalysis print = FingerAnalyzer.analyse(PRINT, 500);
    FingerAnalysis coreless = FingerAnalyzer.analyse(Drawn.stripes(420, 420, 9, 0, 0.5), 500);
    double own = QualityMetric.CORE_TO_BORDER.of(print).orElseThrow();
    assertTrue(own > 0);
    assertEquals(own, hand(print, print, print, coreless).orElseThrow());
    assertEquals(0, hand(print, coreless, coreless, coreless).orElseThrow());
    assertTrue(hand(print, print).isEmpty(), "two fingers are no hand");
  }

  private static OptionalDouble hand(FingerAnalysis... fingers) {
    return QualityMetric.handCoreToBorder(List.of(fingers));
  }

  @Test
  void aRoundPrintOfRingsTellsNoLean() {
    byte[] pixels = Drawn.blank(500, 500, Drawn.PAPER).toArray();
    for (int y = 0; y < 500; y++) {
      for (int x = 0; x < 500; x++) {
        double radius = Math.hypot(x - 250, y - 250);
        if (radius < 200) {
          pixels[y * 500 + x] = (byte) (128 + 90 * Math.cos(2 * Math.PI * radius / 9));
        }
      }
    }
    assertTrue(value(QualityMetric.ROTATION_CONFIDENCE, GrayImage.owning(500, 500, pixels)) < 0.25);
  }

  static Stream<GrayImage> oddImages() {
    GrayImage print = PRINT;
    return Stream.of(
        Drawn.turned(print, 90),
        Drawn.turned(print, 180),
        Drawn.mirrored(print),
        Drawn.inverted(print),
        Drawn.stripes(24, 24, 9, 0, 0.5),
        Drawn.stripes(900, 40, 9, 0, 0.5),
        Drawn.stripes(40, 900, 9, 90, 0.5),
        filledWith(print, 0, 0, 320, 210, 0));
  }

  @ParameterizedTest
  @MethodSource("oddImages")
  void everyMeasureOfAnOddImageIsANumber(GrayImage image) {
    FingerAnalysis analysis = FingerAnalyzer.analyse(image, 500);
    for (QualityMetric measure : QualityMetric.values()) {
      double value = measure.of(analysis).orElse(0);
      assertTrue(Double.isFinite(value) && value >= 0, measure.key() + " " + value);
    }
  }
}
