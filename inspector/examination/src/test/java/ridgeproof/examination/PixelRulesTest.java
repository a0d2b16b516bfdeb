package ridgeproof.examination;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.finding.Finding;
import ridgeproof.imagery.GrayImage;
import ridgeproof.spec.rule.Severity;
import ridgeproof.testing.ReferenceFiles;

class PixelRulesTest {

  private static final Set<String> PIXEL_RULES =
      Set.of(
          "RP-IMG-032",
          "RP-IMG-033",
          "RP-IMG-034",
          "RP-IMG-035",
          "RP-IMG-036",
          "RP-IMG-037",
          "RP-IMG-038",
          "RP-IMG-039",
          "RP-IMG-040");

  private static List<Finding> found(FindingsReport report) {
    return report.findings().stream().filter(f -> PIXEL_RULES.contains(f.ruleId())).toList();
  }

  private static Set<String> ids(SampleCard card) {
    Set<String> ids = new TreeSet<>();
    found(card.examine()).forEach(finding -> ids.add(finding.ruleId()));
    return ids;
  }

  private static GrayImage overlay(GrayImage image, int top, int left, int gray) {
    byte[] pixels = image.toArray();
    for (int i = 0; i < pixels.length; i++) {
      if (i / image.width() < top || i % image.width() < left) {
        pixels[i] = (byte) gray;
      }
    }
    return GrayImage.owning(image.width(), image.height(), pixels);
  }

  @Test
  void aGoodPrintHasNoFinding() {
    assertEquals(Set.of(), ids(RidgeImage.card(RidgeImage.usual(), "500")));
  }

  @Test
  void nothingIsSaidOfPixelsThatWereNotDecoded() {
    byte[] card = RidgeImage.card(RidgeImage.constant(0), "500").bytes();
    ExaminationOptions structure = ExaminationOptions.standard().withDepth(Depth.STRUCTURE);
    assertEquals(List.of(), found(SampleCard.examine(card, structure)));
  }

  @Test
  void anImageOfOneGrayLevelIsNoPrint() {
    assertEquals(Set.of("RP-IMG-033"), ids(RidgeImage.withThumb(RidgeImage.constant(255))));
  }

  @Test
  void anImageOfADeclaredMissingFingerMayBeEmpty() {
    SampleCard card =
        SampleCard.rolledTagged()
            .with(
                3,
                old ->
                    RidgeImage.record(1, RidgeImage.constant(255))
                        .with(18, List.of(List.of("1", "XX"))));
    assertFalse(ids(card).contains("RP-IMG-033"));
  }

  @Test
  void anImageOfPaperAloneShowsNothing() {
    GrayImage paper = RidgeImage.mapped(RidgeImage.usual(), gray -> 230 + gray % 7);
    assertEquals(Set.of("RP-IMG-034"), ids(RidgeImage.withThumb(paper)));
  }

  @Test
  void aFaintPrintHasTooFewGrayLevels() {
    GrayImage faint = RidgeImage.mapped(RidgeImage.usual(), gray -> 140 + gray * 100 / 255);
    List<Finding> found = found(RidgeImage.withThumb(faint).examine());
    assertEquals(1, found.size());
    assertEquals("RP-IMG-035", found.get(0).ruleId());
    assertEquals(128, found.get(0).evidence().get(0).limit().orElseThrow());
    assertTrue(found.get(0).evidence().get(0).value() < 128);
  }

  @Test
  void aCardOfWhichFewPrintsReachTheWantedGrayLevelsIsTold() {
    GrayImage dull = RidgeImage.mapped(RidgeImage.usual(), gray -> 60 + gray * 170 / 255);
    assertEquals(Set.of("RP-IMG-036"), ids(RidgeImage.card(dull, "500")));
  }

  @Test
  void aSingleDullPrintIsNoMatterOfShares() {
    GrayImage dull = RidgeImage.mapped(RidgeImage.usual(), gray -> 60 + gray * 170 / 255);
    assertEquals(Set.of(), ids(RidgeImage.withThumb(dull)));
  }

  @Test
  void aNegativeIsFound() {
    GrayImage negative = RidgeImage.mapped(RidgeImage.usual(), gray -> 255 - gray);
    assertEquals(Set.of("RP-IMG-037"), ids(RidgeImage.withThumb(negative)));
  }

  @Test
  void aTraceMayBeANegative() {
    GrayImage negative = RidgeImage.mapped(RidgeImage.usual(), gray -> 255 - gray);
    SampleCard card = RidgeImage.withThumb(RidgeImage.record(1, negative).with(3, "7"));
    assertFalse(ids(card).contains("RP-IMG-037"));
  }

  @Test
  void aGroundPaintedBlackIsNoNegative() {
    assertFalse(ids(RidgeImage.withThumb(onBlack(RidgeImage.usual()))).contains("RP-IMG-037"));
  }

  /** The middle of the print, cut out and laid on black. */
  private static GrayImage onBlack(GrayImage print) {
    byte[] pixels = print.toArray();
    for (int y = 0; y < print.height(); y++) {
      for (int x = 0; x < print.width(); x++) {
        double across = (x - print.width() / 2.0) / (print.width() * 0.40);
        double down = (y - print.height() / 2.0) / (print.height() * 0.40);
        if (Math.hypot(across, down) >= 1) {
          pixels[y * print.width() + x] = 0;
        }
      }
    }
    return GrayImage.owning(print.width(), print.height(), pixels);
  }

  @Test
  void blackRowsAndColumnsAtTheEdgeArePadding() {
    GrayImage padded = overlay(RidgeImage.usual(), 24, 16, 0);
    List<Finding> found = found(RidgeImage.withThumb(padded).examine());
    assertEquals(1, found.size());
    assertEquals("RP-IMG-038", found.get(0).ruleId());
    assertEquals(Severity.NOTE, found.get(0).severity());
    assertEquals(
        "lines of one gray level: top 24, bottom 0, left 16, right 0",
        found.get(0).observed().text());
  }

  @Test
  void paddingIsFoundAfterLossyCompressionToo() {
    GrayImage padded = overlay(RidgeImage.usual(), 48, 0, 0);
    byte[] wsq = RidgeImage.wsq(padded);
    assertEquals(
        Set.of("RP-IMG-038"),
        ids(RidgeImage.withThumb(RidgeImage.record(1, padded, wsq, "WSQ20", "500"))));
  }

  @Test
  void anImageOf1000PpiLabelled500IsFound() {
    List<Finding> found = found(RidgeImage.withThumb(RidgeImage.withPeriod(18.5)).examine());
    assertEquals(1, found.size());
    assertEquals("RP-IMG-039", found.get(0).ruleId());
    assertEquals(0.94, found.get(0).evidence().get(0).value(), 0.03);
  }

  @Test
  void anImageOf500PpiLabelled1000IsFound() {
    GrayImage image = RidgeImage.usual();
    SampleCard card =
        RidgeImage.withThumb(RidgeImage.record(1, image, image.toArray(), "NONE", "1000"));
    assertEquals(Set.of("RP-IMG-039"), ids(card));
  }

  @Test
  void anImageOf1000PpiLabelledSoIsRight() {
    GrayImage image = RidgeImage.withPeriod(18.5);
    SampleCard card =
        RidgeImage.withThumb(RidgeImage.record(1, image, image.toArray(), "NONE", "1000"));
    assertEquals(Set.of(), ids(card));
  }

  @Test
  void aWholeCardAtTheWrongResolutionIsOneFindingOfTheFile() {
    SampleCard card = RidgeImage.card(RidgeImage.usual(), "1000");
    List<Finding> found = found(card.examine());
    assertEquals(1, found.size());
    assertEquals("RP-IMG-040", found.get(0).ruleId());
    assertTrue(found.get(0).location().record().isEmpty());
    assertTrue(found.get(0).observed().text().endsWith("as in 14 of 14 images"));
  }

  @Test
  void theRidgesOfSmallFingersAreNoFault() {
    assertEquals(Set.of(), ids(RidgeImage.withThumb(RidgeImage.withPeriod(6.5))));
    assertEquals(Set.of(), ids(RidgeImage.withThumb(RidgeImage.withPeriod(13))));
  }

  @TestFactory
  Stream<DynamicTest> noPublicReferenceTransactionHasAFindingOfPixels() {
    return ReferenceFiles.all().stream()
        .map(
            path ->
                DynamicTest.dynamicTest(
                    path.getFileName().toString(),
                    () -> assertEquals(List.of(), found(examine(path)))));
  }

  private static FindingsReport examine(Path path) throws IOException {
    return SampleCard.examine(Files.readAllBytes(path));
  }
}
