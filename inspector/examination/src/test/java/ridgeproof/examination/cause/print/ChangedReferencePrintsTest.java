package ridgeproof.examination.cause.print;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.RidgeImage;
import ridgeproof.examination.SampleCard;
import ridgeproof.examination.cause.CauseLog;
import ridgeproof.examination.cause.CauseRule;
import ridgeproof.examination.cause.card.InvertedImages;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.ImageExtraction;
import ridgeproof.examination.facts.PixelStatistics;
import ridgeproof.examination.rules.Rule;
import ridgeproof.examination.rules.image.ImageRules;
import ridgeproof.finding.Finding;
import ridgeproof.finding.FindingLog;
import ridgeproof.imagery.DecodingLimits;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.header.ImageHeaders;
import ridgeproof.testing.ReferenceFiles;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.reader.ParseLimits;
import ridgeproof.transaction.reader.TransactionReader;
import ridgeproof.transaction.record.ByteSource;

/** The prints of a real inked card, changed in memory in one way, still said to be of 500 ppi. */
class ChangedReferencePrintsTest {

  private static final int PRINTS = 14;

  private static List<String> ids(Rule rule, UnaryOperator<GrayImage> change) {
    FindingLog log = new FindingLog(SampleCard.TABLES, 100);
    rule.check(examinee(change), log);
    return log.findings().stream().map(Finding::ruleId).toList();
  }

  private static List<String> ids(CauseRule rule, UnaryOperator<GrayImage> change) {
    CauseLog log = new CauseLog(SampleCard.TABLES);
    rule.establish(examinee(change), List.of(), log);
    return log.causes().stream().map(cause -> cause.finding().ruleId()).toList();
  }

  private static ExaminationInput examinee(UnaryOperator<GrayImage> change) {
    Transaction transaction =
        new TransactionReader(SampleCard.TABLES, ParseLimits.standard())
            .read(ByteSource.of(ReferenceFiles.read("type-4-tpcard.an2")));
    ImageExtraction extraction = new ImageExtraction(SampleCard.TABLES, DecodingLimits.standard());
    List<ExaminedImage> images = new ArrayList<>();
    for (ExaminedImage image : extraction.imagesOf(transaction)) {
      GrayImage changed = change.apply(extraction.decode(image).pixels().orElseThrow());
      images.add(
          image.opened(
              ImageHeaders.read(image.data().orElseThrow()),
              Optional.of(PixelStatistics.of(changed, true, Optional.empty())),
              List.of(),
              Optional.empty()));
    }
    assertEquals(PRINTS, images.size());
    return new ExaminationInput(
        transaction,
        SampleCard.TABLES,
        Depth.IMAGES,
        images,
        Optional.empty(),
        false,
        ExaminationOptions.standard(),
        Optional.empty());
  }

  private static GrayImage doubled(GrayImage image) {
    int width = 2 * image.width();
    int height = 2 * image.height();
    byte[] pixels = new byte[width * height];
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        int right = Math.min((x + 1) / 2, image.width() - 1);
        int below = Math.min((y + 1) / 2, image.height() - 1);
        int sum =
            image.grayAt(x / 2, y / 2)
                + image.grayAt(right, y / 2)
                + image.grayAt(x / 2, below)
                + image.grayAt(right, below);
        pixels[y * width + x] = (byte) (sum / 4);
      }
    }
    return GrayImage.owning(width, height, pixels);
  }

  /** Each pixel at a quarter of the way to the next ones, as programs enlarge about the middle. */
  private static GrayImage enlarged(GrayImage image) {
    int width = 2 * image.width();
    byte[] pixels = new byte[width * 2 * image.height()];
    for (int i = 0; i < pixels.length; i++) {
      int x = i % width;
      int y = i / width;
      int left = Math.max(0, Math.min(image.width() - 2, (x - 1) / 2));
      int top = Math.max(0, Math.min(image.height() - 2, (y - 1) / 2));
      double right = Math.max(0, Math.min(1, (x + 0.5) / 2 - 0.5 - left));
      double below = Math.max(0, Math.min(1, (y + 0.5) / 2 - 0.5 - top));
      double upper = image.grayAt(left, top) * (1 - right) + image.grayAt(left + 1, top) * right;
      double lower =
          image.grayAt(left, top + 1) * (1 - right) + image.grayAt(left + 1, top + 1) * right;
      pixels[i] = (byte) Math.round(upper * (1 - below) + lower * below);
    }
    return GrayImage.owning(width, 2 * image.height(), pixels);
  }

  private static GrayImage halved(GrayImage image) {
    int width = image.width() / 2;
    int height = image.height() / 2;
    byte[] pixels = new byte[width * height];
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        int sum =
            image.grayAt(2 * x, 2 * y)
                + image.grayAt(2 * x + 1, 2 * y)
                + image.grayAt(2 * x, 2 * y + 1)
                + image.grayAt(2 * x + 1, 2 * y + 1);
        pixels[y * width + x] = (byte) (sum / 4);
      }
    }
    return GrayImage.owning(width, height, pixels);
  }

  @Test
  void theCardAsItIsFitsItsResolution() {
    assertEquals(List.of(), ids(new RidgePeriodCause(), image -> image));
  }

  @Test
  void theCardAtTwiceItsResolutionDoesNot() {
    assertEquals(
        List.of("RP-IMG-040"), ids(new RidgePeriodCause(), ChangedReferencePrintsTest::doubled));
  }

  @Test
  void theCardAtHalfItsResolutionDoesNot() {
    assertEquals(
        List.of("RP-IMG-040"), ids(new RidgePeriodCause(), ChangedReferencePrintsTest::halved));
  }

  @Test
  void allPrintsTurnedIntoTheirNegativesAreOneCause() {
    List<String> found =
        ids(new InvertedImages(), image -> RidgeImage.mapped(image, gray -> 255 - gray));
    assertEquals(List.of("RP-IMG-051"), found);
    assertEquals(List.of(), ids(new InvertedImages(), image -> image));
  }

  @Test
  void theCardEnlargedFromHalfItsResolutionIsFound() {
    List<String> found = ids(new ScaleCauses(), image -> enlarged(halved(image)));
    assertEquals(List.of("RP-IMG-053"), found);
    assertEquals(List.of(), ids(new ScaleCauses(), image -> image));
  }

  @Test
  void eachPrintFadedToAThirdIsFound() {
    Rule grayRange =
        ImageRules.all().stream()
            .filter(rule -> rule.ids().contains("RP-IMG-035"))
            .findFirst()
            .orElseThrow();
    List<String> found = ids(grayRange, image -> RidgeImage.mapped(image, gray -> 150 + gray / 3));
    assertEquals(PRINTS, Collections.frequency(found, "RP-IMG-035"));
  }
}
