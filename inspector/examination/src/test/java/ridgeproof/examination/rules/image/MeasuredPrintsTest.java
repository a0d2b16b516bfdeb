package ridgeproof.examination.rules.image;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import ridgeproof.examination.limit.MeasuredImage;
import ridgeproof.imagery.ImageFormat;

/** Which of gray, scanned and marked prints an image is. */
class MeasuredPrintsTest {

  private static final MeasuredImage SOUND = MeasuredImage.sound();
  private static final MeasuredImage BLACK_AND_WHITE = SOUND.levels(2, 42_000);

  private static String kinds(OpenedPrint print, MeasuredImage measured) {
    MeasuredPrints prints =
        new MeasuredPrints(
            print
                .saying(OpenedPrint.header(ImageFormat.RAW))
                .showing(measured.statistics())
                .input(OpenedPrint.STRUCTURE));
    return (prints.gray().isEmpty() ? "" : "gray ")
        + (prints.scanned().isEmpty() ? "" : "scanned ")
        + (prints.marked().isEmpty() ? "" : "marked");
  }

  private static OpenedPrint with(int field, String value) {
    return OpenedPrint.of(draft -> draft.with(field, value));
  }

  @Test
  void aSoundPrintIsAllOfThem() {
    assertEquals("gray scanned marked", kinds(OpenedPrint.sample(), SOUND));
  }

  @Test
  void aGrayPrintOfBlackAndWhiteAloneIsMarked() {
    assertEquals("marked", kinds(OpenedPrint.sample(), BLACK_AND_WHITE));
  }

  @Test
  void aPrintOfOneBitIsNotExpectedToBeGray() {
    assertEquals("", kinds(with(12, "1"), BLACK_AND_WHITE));
  }

  @Test
  void aTraceIsNotScanned() {
    assertEquals("gray ", kinds(with(3, "7"), SOUND));
  }

  @Test
  void aBlankImageIsNone() {
    assertEquals("", kinds(OpenedPrint.sample(), SOUND.levels(200, 1).bare(245, 99_999)));
  }
}
