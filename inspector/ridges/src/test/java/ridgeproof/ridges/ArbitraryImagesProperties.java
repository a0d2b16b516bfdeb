package ridgeproof.ridges;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import ridgeproof.imagery.GrayImage;
import ridgeproof.ridges.map.Drawn;
import ridgeproof.ridges.quality.FingerAnalysis;
import ridgeproof.ridges.quality.FingerAnalyzer;
import ridgeproof.ridges.segmentation.Segment;
import ridgeproof.ridges.segmentation.SlapSegmenter;
import ridgeproof.spec.layout.FingerPosition;

class ArbitraryImagesProperties {

  @Property(tries = 60)
  void anyImageGivesAnAnswer(
      @ForAll @IntRange(min = 1, max = 150) int width,
      @ForAll @IntRange(min = 1, max = 150) int height,
      @ForAll @DoubleRange(min = 200, max = 1300) double ppi,
      @ForAll long seed) {
    GrayImage image = Drawn.noise(width, height, seed);
    FingerAnalysis finger = FingerAnalyzer.analyse(image, ppi);
    assertTrue(finger.measures().isPresent() || !finger.doubts().isEmpty());
    assertTrue(finger.score().value() < 40, "score " + finger.score().value());
    List<FingerPosition> expected = FingerPosition.shownBy(14);
    assertEquals(
        expected,
        SlapSegmenter.segment(image, ppi, expected).segments().stream()
            .map(Segment::position)
            .toList());
  }

  @Property(tries = 40)
  void smallStripedImagesGiveAnAnswerWithinBounds(
      @ForAll @IntRange(min = 20, max = 260) int width,
      @ForAll @IntRange(min = 20, max = 260) int height,
      @ForAll @DoubleRange(min = 3, max = 25) double period,
      @ForAll @DoubleRange(min = 0, max = 180) double degrees) {
    GrayImage image = Drawn.stripes(width, height, period, degrees, 0.5);
    FingerAnalysis finger = FingerAnalyzer.analyse(image, 500);
    assertTrue(finger.score().value() >= 0 && finger.score().value() <= 100);
    finger
        .measures()
        .ifPresent(
            m -> {
              assertTrue(m.flow().certainty() >= 0 && m.flow().certainty() <= 1.0001);
              assertTrue(m.clarity().clarity() >= 0 && m.clarity().clarity() <= 1);
              assertTrue(m.tone().ridgeShare() >= 0 && m.tone().ridgeShare() <= 1);
              assertTrue(m.extent().ridgeAreaMm2() <= m.extent().areaMm2());
            });
  }
}
