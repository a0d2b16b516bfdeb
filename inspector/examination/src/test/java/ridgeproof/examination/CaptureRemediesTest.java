package ridgeproof.examination;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.finding.Finding;
import ridgeproof.finding.FindingLog;
import ridgeproof.finding.Observed;
import ridgeproof.spec.layout.FingerPosition;

/** What to do about a print suits how it was captured. */
class CaptureRemediesTest {

  private static final String DRY = "RP-RDG-004";

  private static ExaminedImage slap(String impression) {
    return SampleRecords.tagged(SampleRecords.RIGHT_SLAP, record -> record.with(3, impression))
        .examine()
        .images()
        .stream()
        .filter(image -> image.position().equals(OptionalInt.of(13)))
        .findFirst()
        .orElseThrow();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0|Before the next attempt, add a trace of moisture to the right ring finger, and press"
            + " the whole hand a little more firmly.",
        "2|Use a little more ink for the right ring finger, and press a little more firmly.",
        "29|Before the next attempt, add a trace of moisture to the right ring finger, and press"
            + " a little more firmly."
      })
  void aFingerOfASlapIsPressedWithItsHandAndACardIsInked(String impression, String remedy) {
    ExaminedImage image = slap(impression);
    FindingLog log = new FindingLog(SampleCard.TABLES, 10);
    log.add(
        DRY,
        image.location(FingerPosition.RIGHT_RING),
        Observed.of("grain: 40 %"),
        "at most 36 %",
        List.of());
    Finding suited =
        new CaptureRemedies(List.of(image), SampleCard.TABLES).suited(log.findings().get(0));
    assertEquals(remedy, suited.remedy());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0|Recapture the right ring finger within the capture window, or ask the station's vendor to"
            + " set the maximum size.",
        "2|Crop the scan to the box for the right ring finger on the card, or ask the station's vendor"
            + " to set the maximum size."
      })
  void aScannedCardHasNoCaptureWindow(String impression, String remedy) {
    ExaminedImage image = slap(impression);
    FindingLog log = new FindingLog(SampleCard.TABLES, 10);
    log.add(
        "RP-IMG-009",
        image.location(FingerPosition.RIGHT_RING),
        Observed.of("45.72 x 35.56 mm"),
        "at most 40.64 x 38.10 mm",
        List.of());
    Finding suited =
        new CaptureRemedies(List.of(image), SampleCard.TABLES).suited(log.findings().get(0));
    assertEquals(remedy, suited.remedy());
  }
}
