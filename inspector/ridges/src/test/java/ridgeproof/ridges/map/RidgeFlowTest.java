package ridgeproof.ridges.map;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ridgeproof.imagery.GrayImage;
import ridgeproof.ridges.quality.BlockMap;
import ridgeproof.ridges.quality.FingerAnalysis;
import ridgeproof.ridges.quality.FingerAnalyzer;
import ridgeproof.ridges.quality.FingerMeasures;
import ridgeproof.ridges.quality.FlowMeasure;
import ridgeproof.ridges.quality.ToneMeasure;

class RidgeFlowTest {

  private static FingerMeasures measured(GrayImage image) {
    return FingerAnalyzer.analyse(image, 500).measures().orElseThrow();
  }

  @ParameterizedTest
  @ValueSource(doubles = {5.5, 7, 8.3, 9, 10.6, 12, 14.5})
  void thePeriodOfStripesIsMeasuredWithinThreePercent(double period) {
    FlowMeasure flow = measured(Drawn.stripes(320, 400, period, 25, 0.5)).flow();
    assertEquals(period, flow.periodPixels(), 0.03 * period);
    assertEquals(period * 25.4 / 500, flow.periodMm(), 0.03 * period * 25.4 / 500);
    assertTrue(flow.periodSpread() < 0.05, "spread " + flow.periodSpread());
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 17, 45, 80, 90, 120, 163})
  void theDirectionOfStripesIsMeasuredWithinTwoDegrees(double degrees) {
    GrayImage image = Drawn.stripes(320, 400, 9, degrees, 0.5);
    BlockMap maps = measured(image).maps();
    int column = maps.columns() / 2;
    int row = maps.rows() / 2;
    double off = Math.IEEEremainder(maps.orientation(column, row) - degrees, 180);
    assertTrue(Math.abs(off) < 2, "off by " + off);
    assertTrue(maps.certainty(column, row) > 0.9);
  }

  @Test
  void lengthsInMillimetresDoNotDependOnTheResolution() {
    FlowMeasure coarse = measured(Drawn.stripes(320, 400, 9, 25, 0.5)).flow();
    FingerMeasures fine =
        FingerAnalyzer.analyse(Drawn.stripes(640, 800, 18, 25, 0.5), 1000).measures().orElseThrow();
    assertEquals(coarse.periodMm(), fine.flow().periodMm(), 0.02);
    assertEquals(18, fine.flow().periodPixels(), 0.6);
    FingerMeasures half = measured(Drawn.stripes(320, 400, 9, 25, 0.5));
    assertEquals(half.extent().widthMm(), fine.extent().widthMm(), 1.3);
    assertEquals(half.extent().areaMm2(), fine.extent().areaMm2(), 25);
  }

  @Test
  void theAreaOfAnEllipseIsMeasuredWithinATenth() {
    double expected = Math.PI * 320 * 0.45 * 400 * 0.45 * Math.pow(25.4 / 500, 2);
    double area = measured(Drawn.stripes(320, 400, 9, 25, 0.5)).extent().areaMm2();
    assertEquals(expected, area, 0.1 * expected);
  }

  @Test
  void thinRidgesAreDryAndBroadRidgesAreDark() {
    ToneMeasure dry = measured(Drawn.stripes(320, 400, 10, 20, 0.25)).tone();
    ToneMeasure usual = measured(Drawn.stripes(320, 400, 10, 20, 0.5)).tone();
    ToneMeasure dark = measured(Drawn.stripes(320, 400, 10, 20, 0.75)).tone();
    assertTrue(dry.ridgeShare() < 0.42, "dry " + dry.ridgeShare());
    assertEquals(0.5, usual.ridgeShare(), 0.05);
    assertTrue(dark.ridgeShare() > 0.58, "dark " + dark.ridgeShare());
    assertTrue(dry.dryShare() > usual.dryShare() + 0.3);
    assertTrue(dark.darkShare() > usual.darkShare() + 0.3);
  }

  @Test
  void blurringWidensTheStepFromRidgeToValley() {
    GrayImage sharp = Drawn.stripes(320, 400, 10, 20, 0.5);
    byte[] pixels = sharp.toArray();
    for (int i = 0; i < 3; i++) {
      pixels = Smoothing.pixels(pixels, 320, 400);
    }
    FingerMeasures blurred = measured(GrayImage.owning(320, 400, pixels));
    FingerMeasures before = measured(sharp);
    assertTrue(blurred.clarity().edgePixels() > 1.15 * before.clarity().edgePixels());
    assertTrue(blurred.tone().contrast() < 0.8 * before.tone().contrast());
  }

  @Test
  void noiseOverRidgesLowersClarityAndScore() {
    GrayImage clean = Drawn.print(320, 400, new double[] {170, 170}, new double[] {230, 290}, 3);
    byte[] pixels = clean.toArray();
    Random random = new Random(5);
    for (int i = 0; i < pixels.length; i++) {
      double gray = (pixels[i] & 0xFF) * 0.5 + 64 + 45 * random.nextGaussian();
      pixels[i] = (byte) Math.max(0, Math.min(255, Math.round(gray)));
    }
    FingerAnalysis before = FingerAnalyzer.analyse(clean, 500);
    FingerAnalysis after = FingerAnalyzer.analyse(GrayImage.owning(320, 400, pixels), 500);
    assertTrue(
        after.measures().map(m -> m.clarity().clarity()).orElse(0.0)
            < before.measures().orElseThrow().clarity().clarity() - 0.1);
    assertTrue(after.score().value() < before.score().value() - 5);
  }
}
