package ridgeproof.report.comparison;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ridgeproof.examination.comparison.FingerCapture;
import ridgeproof.examination.comparison.FingerChange;
import ridgeproof.report.ReportPhrases;
import ridgeproof.report.Reports;
import ridgeproof.ridges.quality.FingerAnalysis;
import ridgeproof.ridges.quality.QualityScore;
import ridgeproof.ridges.quality.QualityScore.Aspect;
import ridgeproof.ridges.quality.QualityScore.Part;
import ridgeproof.spec.layout.FingerPosition;

/** What is said of a finger before and after. */
class FingerRowTest {

  private static Optional<FingerCapture> capture(Part... parts) {
    FingerAnalysis analysis =
        new FingerAnalysis(List.of(), Optional.empty(), new QualityScore(60, List.of(parts)));
    return Optional.of(new FingerCapture(null, Optional.of(analysis), List.of()));
  }

  private static Part part(Aspect aspect, int value) {
    return new Part(aspect, value, 1, 1);
  }

  private static List<String> why(
      Optional<FingerCapture> first, Optional<FingerCapture> second, boolean same) {
    FingerChange change = new FingerChange(FingerPosition.LEFT_INDEX, true, first, second, same);
    return FingerRow.of(change, new ReportPhrases(Reports.TABLES)).why();
  }

  @Test
  void theTwoPartsThatChangedMostAreNamedTheLargestFirst() {
    assertEquals(
        List.of("Core position 10, now 80", "Moisture 90, now 50"),
        why(
            capture(part(Aspect.MINUTIAE, 60), part(Aspect.MOISTURE, 90), part(Aspect.CORE, 10)),
            capture(part(Aspect.MINUTIAE, 30), part(Aspect.MOISTURE, 50), part(Aspect.CORE, 80)),
            false));
  }

  @Test
  void partsThatChangedAlikeAreBothNamed() {
    assertEquals(
        List.of("Minutiae 60, now 90", "Moisture 60, now 90"),
        why(
            capture(part(Aspect.MINUTIAE, 60), part(Aspect.MOISTURE, 60)),
            capture(part(Aspect.MINUTIAE, 90), part(Aspect.MOISTURE, 90)),
            false));
  }

  @Test
  void aChangeOfTenIsNamedAndOneOfNineIsNot() {
    assertEquals(
        List.of("Ridge area 70, now 60"),
        why(
            capture(part(Aspect.RIDGE_AREA, 70), part(Aspect.CLARITY, 70)),
            capture(part(Aspect.RIDGE_AREA, 60), part(Aspect.CLARITY, 61)),
            false));
  }

  @Test
  void oneCaptureHasNoChangeOfItsParts() {
    assertEquals(
        List.of(),
        why(capture(part(Aspect.MINUTIAE, 20)), capture(part(Aspect.MINUTIAE, 90)), true));
  }

  @ParameterizedTest
  @CsvSource({
    "MINUTIAE, Minutiae",
    "MOISTURE, Moisture",
    "RIDGE_AREA, Ridge area",
    "CLARITY, Ridge clarity",
    "RIDGE_DISTANCE, Ridge spacing",
    "CORE, Core position",
    "POLARITY, Ridge contrast",
  })
  void everyPartHasAName(Aspect aspect, String name) {
    assertEquals(
        List.of(name + " 20, now 90"),
        why(capture(part(aspect, 20)), capture(part(aspect, 90)), false));
  }
}
