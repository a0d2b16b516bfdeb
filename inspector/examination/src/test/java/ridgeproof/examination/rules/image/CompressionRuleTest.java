package ridgeproof.examination.rules.image;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.RidgeImage;
import ridgeproof.examination.RuleExamples;
import ridgeproof.examination.SampleCard;
import ridgeproof.examination.Verdict;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.examination.limit.MeasuredImage;
import ridgeproof.finding.Finding;
import ridgeproof.imagery.DecodingLimits;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.ImageCodec.StatedSize;
import ridgeproof.imagery.ImageFormat;
import ridgeproof.imagery.codec.PngCodec;
import ridgeproof.testing.RealPrints;
import ridgeproof.testing.ReferenceFiles;
import ridgeproof.transaction.record.ByteSource;

/** What an encoder was set to decides, not how many bytes came of it. */
class CompressionRuleTest {

  private static final List<String> SOME_PRINTS =
      List.of("fvc2002-db1b/101_1.png", "fvc2002-db1b/107_3.png", "fvc2004-db1b/104_2.png");

  private static List<Finding> found(FindingsReport report) {
    return report.findings().stream().filter(f -> f.ruleId().equals("RP-IMG-016")).toList();
  }

  private static int accused(GrayImage image, double rate) {
    return found(RuleExamples.wsqCard(image, rate).examine()).size();
  }

  /** The print in the upper left corner of so many times its area of paper. */
  private static GrayImage onPaper(GrayImage print, int times) {
    int width = print.width() * times;
    byte[] pixels = new byte[width * print.height() * times];
    Arrays.fill(pixels, (byte) 250);
    byte[] gray = print.toArray();
    for (int y = 0; y < print.height(); y++) {
      System.arraycopy(gray, y * print.width(), pixels, y * width, print.width());
    }
    return GrayImage.owning(width, print.height() * times, pixels);
  }

  private static List<GrayImage> prints() {
    List<GrayImage> prints = new ArrayList<>(List.of(RidgeImage.usual(), RidgeImage.withPeriod(7)));
    for (String name : SOME_PRINTS) {
      prints.add(
          new PngCodec()
              .decode(
                  ByteSource.of(RealPrints.read(name)),
                  new StatedSize(0, 0, 8),
                  DecodingLimits.standard())
              .image()
              .orElseThrow());
    }
    return prints;
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.75, 1.5, 2.25})
  void whatWasEncodedAtThePublishedRateIsNeverAccusedHoweverWhiteItIs(double rate) {
    for (GrayImage print : prints()) {
      for (int times = 1; times <= 3; times++) {
        assertEquals(0, accused(onPaper(print, times), rate), "paper " + times);
      }
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.5, 0.35, 0.25})
  void whatWasEncodedWellBelowThePublishedRateIsAccusedHoweverWhiteItIs(double rate) {
    for (GrayImage print : prints()) {
      for (int times = 1; times <= 2; times++) {
        assertEquals(1, accused(onPaper(print, times), rate), "paper " + times);
      }
    }
  }

  @Test
  void aWrongNumberOfBitsForEachPixelAccusesNobody() {
    SampleCard card =
        RuleExamples.wsqCard(RidgeImage.usual(), 0.75).with(3, draft -> draft.with(12, "24"));
    assertEquals(List.of(), found(card.examine()));
  }

  @Test
  void anImageOfOneGrayLevelIsNotAccused() {
    byte[] white = new byte[400 * 400];
    Arrays.fill(white, (byte) 255);
    assertEquals(0, accused(GrayImage.owning(400, 400, white), 0.75));
  }

  @Test
  void noReferenceImageIsAccused() {
    for (var file : ReferenceFiles.all()) {
      byte[] bytes = ReferenceFiles.read(file.getFileName().toString());
      assertEquals(List.of(), found(SampleCard.examine(bytes)), file.getFileName().toString());
    }
  }

  @Test
  void aLosslessJpegOfAnOldEncoderIsDecodedWithANoteThatCitesNoOtherFormat() {
    byte[] jpeg = RuleExamples.losslessJpeg(1);
    FindingsReport report =
        RuleExamples.tagged(d -> RuleExamples.data(d.with(11, "JPEGL"), jpeg)).examine();
    assertEquals(Verdict.READY, report.verdict());
    Finding note =
        report.findings().stream()
            .filter(finding -> finding.ruleId().equals("RP-IMG-050"))
            .findFirst()
            .orElseThrow();
    assertEquals("T81", note.source().document());
    assertFalse(note.location().bytes().isEmpty());
    assertEquals(
        SampleCard.pixels(SampleCard.WIDTH * SampleCard.HEIGHT).length(),
        report.images().get(0).pixels().orElseThrow().width() * SampleCard.HEIGHT);
  }

  @Test
  void aDamagedLosslessJpegCitesItsOwnSpecification() {
    byte[] jpeg = RuleExamples.losslessJpeg(1);
    byte[] cut = Arrays.copyOf(jpeg, jpeg.length / 2);
    FindingsReport report =
        RuleExamples.tagged(d -> RuleExamples.data(d.with(11, "JPEGL"), cut)).examine();
    List<Finding> damage =
        report.findings().stream().filter(f -> f.ruleId().equals("RP-IMG-006")).toList();
    assertFalse(damage.isEmpty());
    damage.forEach(finding -> assertEquals("T81", finding.source().document()));
  }

  /** 42,000 pixels of print, and as many of paper, which count as free. */
  private static List<String> found(
      ImageFormat format, int bytes, OptionalDouble rate, ExaminationOptions options) {
    return OpenedPrint.sample()
        .saying(OpenedPrint.compressed(format, bytes, rate))
        .showing(MeasuredImage.sound().bare(245, 42_000).statistics())
        .found(new CompressionRule(), options);
  }

  @Test
  void theBytesForThePrintDecideWhereTheSettingIsNotTold() {
    OptionalDouble none = OptionalDouble.empty();
    assertEquals(List.of(), found(ImageFormat.WSQ, 2175, none, OpenedPrint.STRUCTURE));
    assertEquals(
        List.of("RP-IMG-016 19.3 : 1 over the print; at most 18.8 : 1 over the print"),
        found(ImageFormat.WSQ, 2174, none, OpenedPrint.STRUCTURE));
  }

  @Test
  void theSettingDecidesWhereItIsToldHoweverManyBytesCameOfIt() {
    OptionalDouble within = OptionalDouble.of(0.5826);
    OptionalDouble below = OptionalDouble.of(0.5824);
    assertEquals(List.of(), found(ImageFormat.WSQ, 100, within, OpenedPrint.STRUCTURE));
    assertEquals(
        List.of(
            "RP-IMG-016 encoder set to 0.58 bit per pixel;"
                + " 15 : 1, a setting of at least 0.60 bit per pixel"),
        found(ImageFormat.WSQ, 40_000, below, OpenedPrint.STRUCTURE));
  }

  @Test
  void anAgencyMayLimitAFormatThatNoDocumentLimits() {
    ExaminationOptions agency = OpenedPrint.agency("[limits.compression]\nJPEG_2000 = 10\n");
    OptionalDouble none = OptionalDouble.empty();
    assertEquals(List.of(), found(ImageFormat.JPEG_2000, 100, none, OpenedPrint.STRUCTURE));
    assertEquals(List.of(), found(ImageFormat.JPEG_2000, 4078, none, agency));
    assertEquals(
        List.of("RP-IMG-016 10.3 : 1 over the print; at most 10.0 : 1 over the print"),
        found(ImageFormat.JPEG_2000, 4077, none, agency));
    assertEquals(
        List.of("RP-IMG-016 19.3 : 1 over the print; at most 18.8 : 1 over the print"),
        found(ImageFormat.WSQ, 2174, none, agency),
        "the published ceiling of another format is kept");
  }

  @Test
  void anImageOfWhichNothingIsMeasuredIsNotAccused() {
    assertEquals(
        List.of(),
        OpenedPrint.sample()
            .saying(OpenedPrint.compressed(ImageFormat.WSQ, 1, OptionalDouble.empty()))
            .found(new CompressionRule()));
  }
}
