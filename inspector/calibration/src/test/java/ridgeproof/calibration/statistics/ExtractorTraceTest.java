package ridgeproof.calibration.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import ridgeproof.corpus.finger.MasterFinger;
import ridgeproof.corpus.impression.Impression;
import ridgeproof.corpus.impression.ImpressionSettings;
import ridgeproof.ridges.matching.Minutia;
import ridgeproof.ridges.quality.FingerAnalysis;
import ridgeproof.ridges.quality.FingerAnalyzer;
import ridgeproof.spec.layout.FingerPosition;

class ExtractorTraceTest {

  @Test
  void ofAPrintWithLessThanAHundredMinutiaeTheTraceTellsTheVeryOnesKept() {
    MasterFinger finger = MasterFinger.grow(3, FingerPosition.RIGHT_INDEX);
    Impression print = Impression.plain(finger, ImpressionSettings.natural(3));
    FingerAnalysis analysis;
    List<ExtractorTrace.Seen> seen;
    try (ExtractorTrace trace = new ExtractorTrace()) {
      analysis = FingerAnalyzer.analyse(print.image(), print.ppi());
      seen = trace.seen();
    }
    List<Minutia> kept = analysis.measures().orElseThrow().minutiae().list();
    assertTrue(kept.size() > 10 && kept.size() < 100, "minutiae: " + kept.size());
    int endings = (int) kept.stream().filter(Minutia::ending).count();
    assertEquals(List.of(new ExtractorTrace.Seen(endings, kept.size() - endings)), seen);
  }
}
