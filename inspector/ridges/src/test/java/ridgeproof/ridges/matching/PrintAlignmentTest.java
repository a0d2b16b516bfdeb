package ridgeproof.ridges.matching;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import ridgeproof.imagery.GrayImage;
import ridgeproof.ridges.map.Drawn;
import ridgeproof.ridges.map.RotatedBox;
import ridgeproof.ridges.quality.FingerAnalyzer;

class PrintAlignmentTest {

  private static final double[] CORES = {160, 180};
  private static final double[] DELTAS = {240, 300};

  private static Minutiae minutiae(GrayImage image) {
    return FingerAnalyzer.analyse(image, 500).measures().orElseThrow().minutiae();
  }

  @Test
  void aPartThatWasTurnedAndCutOutLiesWhereItWasCut() {
    GrayImage roll = Drawn.print(340, 420, CORES, DELTAS, 2);
    GrayImage part = new RotatedBox(165, 215, 250, 320, 6).cut(roll);
    PrintAlignment lies = minutiae(roll).alignment(minutiae(part)).orElseThrow();
    assertEquals(165, lies.firstX(125, 160), 3);
    assertEquals(215, lies.firstY(125, 160), 3);
    assertEquals(6, Math.abs(lies.degrees()), 1.5);
    assertTrue(lies.pairs() >= 10, lies.toString());
  }

  @Test
  void thereAndBackIsTheSamePlace() {
    PrintAlignment lies = new PrintAlignment(0.8, 0.3, 12, -7, 9, 0, 0, 1, 1);
    double x = lies.firstX(100, 50);
    double y = lies.firstY(100, 50);
    assertEquals(100, lies.secondX(x, y), 1e-9);
    assertEquals(50, lies.secondY(x, y), 1e-9);
  }

  @Test
  void theFitFindsATurnAScaleAndAShift() {
    PrintAlignment truth = new PrintAlignment(0.98, 0.1, 5, 9, 3, 0, 0, 1, 1);
    List<Minutia> second = List.of(at(0, 0), at(100, 10), at(30, 80));
    List<Minutia> first =
        second.stream()
            .map(m -> at(truth.firstX(m.x(), m.y()), truth.firstY(m.x(), m.y())))
            .toList();
    PrintAlignment fit = PrintAlignment.fit(first, second);
    assertEquals(truth.a(), fit.a(), 1e-9);
    assertEquals(truth.b(), fit.b(), 1e-9);
    assertEquals(truth.x(), fit.x(), 1e-9);
    assertEquals(truth.y(), fit.y(), 1e-9);
  }

  private static Minutia at(double x, double y) {
    return new Minutia(x, y, 0, true);
  }

  @Test
  void aPrintWithoutMinutiaeLiesNowhere() {
    byte[] paper = new byte[300 * 300];
    Arrays.fill(paper, (byte) 255);
    Minutiae none = Minutiae.of(paper, 300, 300, 500);
    GrayImage roll = Drawn.print(340, 420, CORES, DELTAS, 2);
    assertEquals(Optional.empty(), minutiae(roll).alignment(none));
  }
}
