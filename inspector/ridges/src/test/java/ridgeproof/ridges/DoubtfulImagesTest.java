package ridgeproof.ridges;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import ridgeproof.imagery.GrayImage;
import ridgeproof.ridges.map.Drawn;
import ridgeproof.ridges.map.EdgeContact;
import ridgeproof.ridges.map.RotatedBox;
import ridgeproof.ridges.quality.FingerAnalysis;
import ridgeproof.ridges.quality.FingerAnalyzer;
import ridgeproof.ridges.quality.FingerMeasures;
import ridgeproof.ridges.quality.QualityScore;
import ridgeproof.ridges.quality.ToneMeasure;
import ridgeproof.ridges.segmentation.Segment;
import ridgeproof.ridges.segmentation.SlapSegmenter;
import ridgeproof.spec.layout.FingerPosition;

class DoubtfulImagesTest {

  private static final List<FingerPosition> RIGHT_FOUR = FingerPosition.shownBy(13);

  static Stream<GrayImage> imagesWithoutPrints() {
    return Stream.of(
        Drawn.blank(1, 1, 0),
        Drawn.blank(1, 1, 255),
        Drawn.blank(1, 600, 255),
        Drawn.blank(600, 1, 0),
        Drawn.blank(13, 11, 128),
        Drawn.blank(800, 750, 0),
        Drawn.blank(800, 750, 255),
        Drawn.noise(3, 3, 1),
        Drawn.noise(800, 750, 2),
        Drawn.grain(800, 750, 3),
        Drawn.text(800, 750));
  }

  @ParameterizedTest
  @MethodSource("imagesWithoutPrints")
  void imagesWithoutRidgesHaveAReasonAndNoScore(GrayImage image) {
    FingerAnalysis finger = FingerAnalyzer.analyse(image, 500);
    assertEquals(List.of(FingerAnalysis.Doubt.NO_RIDGES), finger.doubts());
    assertEquals(QualityScore.NONE, finger.score());
    assertTrue(finger.measures().isEmpty());
    for (Segment segment : SlapSegmenter.segment(image, 500, RIGHT_FOUR).segments()) {
      assertTrue(segment.box().isEmpty());
      assertEquals(0, segment.confidence());
      assertEquals(List.of(Segment.Doubt.NO_RIDGES), segment.doubts());
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -500, 72, 100000, Double.NaN, Double.POSITIVE_INFINITY})
  void unusableResolutionsAreAReason(double ppi) {
    GrayImage image = Drawn.stripes(320, 400, 9, 0, 0.5);
    assertEquals(
        List.of(FingerAnalysis.Doubt.UNUSABLE_RESOLUTION),
        FingerAnalyzer.analyse(image, ppi).doubts());
    SlapAnalysis slap = SlapAnalyzer.analyse(image, ppi, RIGHT_FOUR);
    assertTrue(slap.fingers().isEmpty());
    for (Segment segment : slap.slap().segments()) {
      assertEquals(List.of(Segment.Doubt.UNUSABLE_RESOLUTION), segment.doubts());
    }
  }

  @Test
  void invertedTonesAreSeenAndSpoilTheScore() {
    GrayImage print = Drawn.print(320, 420, new double[] {170, 180}, new double[] {230, 300}, 1);
    FingerAnalysis upright = FingerAnalyzer.analyse(print, 500);
    FingerAnalysis inverted = FingerAnalyzer.analyse(Drawn.inverted(print), 500);
    assertTrue(inverted.doubts().contains(FingerAnalysis.Doubt.INVERTED_TONES));
    assertTrue(inverted.score().value() < 60, "score " + inverted.score().value());
    assertTrue(upright.score().value() > 85, "score " + upright.score().value());
    assertEquals(
        ToneMeasure.Polarity.DARK_RIDGES, upright.measures().orElseThrow().tone().polarity());
  }

  @Test
  void aPrintWithoutSurroundingsHasUnknownPolarity() {
    GrayImage print = Drawn.print(500, 600, new double[] {250, 280}, new double[] {350, 420}, 1);
    GrayImage inside = new RotatedBox(250, 300, 240, 280, 0).cut(print);
    FingerAnalysis finger = FingerAnalyzer.analyse(inside, 500);
    assertEquals(ToneMeasure.Polarity.UNKNOWN, finger.measures().orElseThrow().tone().polarity());
    EdgeContact edges = finger.measures().orElseThrow().extent().edges();
    assertTrue(edges.isCutAtTop() && edges.isCutAtSide() && edges.isCutAtBottom());
    assertTrue(finger.doubts().contains(FingerAnalysis.Doubt.CUT_BY_EDGE));
  }

  @Test
  void ridgesAtTwiceTheirSizeAreOfAnUnusualPeriod() {
    GrayImage print = Drawn.stripes(400, 500, 15.5, 10, 0.5);
    assertTrue(
        FingerAnalyzer.analyse(print, 500).doubts().contains(FingerAnalysis.Doubt.UNUSUAL_PERIOD));
  }

  @Test
  void anAnalysisIsTheSameEachTime() {
    GrayImage print = Drawn.print(320, 420, new double[] {170, 180}, new double[] {230, 300}, 1);
    FingerMeasures first = FingerAnalyzer.analyse(print, 500).measures().orElseThrow();
    FingerMeasures second = FingerAnalyzer.analyse(print, 500).measures().orElseThrow();
    assertEquals(first.extent(), second.extent());
    assertEquals(first.flow(), second.flow());
    assertEquals(first.tone(), second.tone());
    assertEquals(first.clarity(), second.clarity());
    assertEquals(first.pattern(), second.pattern());
    assertEquals(first.minutiae().list(), second.minutiae().list());
  }

  @Test
  void everyScoreHasItsPartsAndLiesAmongThem() {
    QualityScore score =
        FingerAnalyzer.analyse(
                Drawn.print(320, 420, new double[] {170, 180}, new double[] {230, 300}, 1), 500)
            .score();
    assertEquals(QualityScore.Aspect.values().length, score.parts().size());
    int least = score.parts().stream().mapToInt(QualityScore.Part::value).min().orElseThrow();
    int most = score.parts().stream().mapToInt(QualityScore.Part::value).max().orElseThrow();
    assertTrue(score.value() >= least && score.value() <= most);
  }
}
