package ridgeproof.ridges;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ridgeproof.imagery.GrayImage;
import ridgeproof.ridges.map.Drawn;
import ridgeproof.ridges.pattern.PatternMeasure;
import ridgeproof.ridges.pattern.PatternMeasure.PatternClass;
import ridgeproof.ridges.pattern.SingularPoint;
import ridgeproof.ridges.pattern.SingularPoint.Kind;
import ridgeproof.ridges.quality.FingerAnalyzer;

class PatternTest {

  private static final int WIDTH = 320;
  private static final int HEIGHT = 420;
  private static final double NEAR = 15;

  private static PatternMeasure pattern(GrayImage image) {
    return FingerAnalyzer.analyse(image, 500).measures().orElseThrow().pattern();
  }

  private static GrayImage leftLoop(long seed) {
    return Drawn.print(WIDTH, HEIGHT, new double[] {170, 180}, new double[] {230, 300}, seed);
  }

  private static void assertPoint(List<SingularPoint> points, Kind kind, double x, double y) {
    assertTrue(
        points.stream().anyMatch(p -> p.kind() == kind && Math.hypot(p.x() - x, p.y() - y) <= NEAR),
        kind + " near " + x + "," + y + " among " + points);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void aLoopHasOneCoreAndOneDeltaWhereTheyWereDrawn(long seed) {
    PatternMeasure loop = pattern(leftLoop(seed));
    assertEquals(2, loop.points().size(), loop.points().toString());
    assertPoint(loop.points(), Kind.CORE, 170, 180);
    assertPoint(loop.points(), Kind.DELTA, 230, 300);
    assertEquals(PatternClass.LEFT_LOOP, loop.pattern());
  }

  @Test
  void theMirrorImageOfALeftLoopIsARightLoop() {
    PatternMeasure loop = pattern(Drawn.mirrored(leftLoop(1)));
    assertPoint(loop.points(), Kind.CORE, WIDTH - 170, 180);
    assertEquals(PatternClass.RIGHT_LOOP, loop.pattern());
  }

  @Test
  void aWhorlHasTwoCoresAndTwoDeltas() {
    PatternMeasure whorl =
        pattern(
            Drawn.print(
                WIDTH,
                HEIGHT,
                new double[] {160, 170, 160, 240},
                new double[] {80, 330, 240, 330},
                4));
    assertPoint(whorl.points(), Kind.CORE, 160, 170);
    assertPoint(whorl.points(), Kind.CORE, 160, 240);
    assertPoint(whorl.points(), Kind.DELTA, 80, 330);
    assertPoint(whorl.points(), Kind.DELTA, 240, 330);
    assertEquals(PatternClass.WHORL, whorl.pattern());
    assertEquals(170, whorl.core().orElseThrow().y(), NEAR);
  }

  @Test
  void anArchHasNeither() {
    PatternMeasure arch = pattern(Drawn.arch(WIDTH, HEIGHT, 2));
    assertEquals(List.of(), arch.points());
    assertEquals(PatternClass.ARCH, arch.pattern());
  }

  @Test
  void straightRidgesAreNoPattern() {
    PatternMeasure straight = pattern(Drawn.stripes(WIDTH, HEIGHT, 9, 10, 0.5));
    assertEquals(List.of(), straight.points());
    assertEquals(PatternClass.UNKNOWN, straight.pattern());
    assertEquals(0, straight.confidence());
  }

  @ParameterizedTest
  @ValueSource(doubles = {-40, -20, 20, 40})
  void aTurnedLoopKeepsItsPointsAndTurnsItsOpening(double degrees) {
    double upright = pattern(leftLoop(1)).core().orElseThrow().degrees();
    GrayImage turned = Drawn.turned(leftLoop(1), degrees);
    PatternMeasure loop = pattern(turned);
    double angle = Math.toRadians(degrees);
    double dx = 170 - WIDTH / 2.0;
    double dy = 180 - HEIGHT / 2.0;
    assertPoint(
        loop.points(),
        Kind.CORE,
        turned.width() / 2.0 + dx * Math.cos(angle) - dy * Math.sin(angle),
        turned.height() / 2.0 + dx * Math.sin(angle) + dy * Math.cos(angle));
    double off = Math.IEEEremainder(loop.core().orElseThrow().degrees() - upright - degrees, 360);
    assertTrue(Math.abs(off) < 15, "off by " + off);
  }

  @Test
  void theDistanceFromCoreToBorderIsThatOfTheEllipse() {
    double shortest = 320 * 0.45 - 10;
    assertEquals(shortest * 25.4 / 500, pattern(leftLoop(1)).coreToBorderMm(), 1.5);
  }
}
