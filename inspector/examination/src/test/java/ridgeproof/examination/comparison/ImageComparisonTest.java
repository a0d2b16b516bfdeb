package ridgeproof.examination.comparison;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ridgeproof.examination.RuleExamples;
import ridgeproof.examination.SampleCard;
import ridgeproof.examination.facts.Depth;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.codec.PngWriter;

/** How much two images have in common, by their bytes and then by their pixels. */
class ImageComparisonTest {

  private static final int THUMB = 3;
  private static final int WIDTH = SampleCard.WIDTH;
  private static final int HEIGHT = SampleCard.HEIGHT;
  private static final byte[] PIXELS = SampleCard.pixels(WIDTH * HEIGHT).toArray();
  private static final SampleCard CARD = SampleCard.rolledTagged();

  private static SampleCard raw(byte[] pixels) {
    return CARD.with(THUMB, draft -> RuleExamples.data(draft, pixels));
  }

  private static byte[] changed(int from, int to, int by) {
    byte[] pixels = PIXELS.clone();
    for (int i = from; i < to; i++) {
      pixels[i] = (byte) ((pixels[i] & 0xFF) + by);
    }
    return pixels;
  }

  private static RecordPair thumb(SampleCard first, SampleCard second, Depth depth) {
    return Compared.cards(first, second, depth).pairs().get(THUMB - 1);
  }

  private static ImageDifference difference(SampleCard first, SampleCard second) {
    return thumb(first, second, Depth.IMAGES).image().orElseThrow();
  }

  @Test
  void theSameBytesInTheSameShapeAreTheSameImage() {
    assertEquals(new ImageDifference.SameBytes(), difference(CARD, CARD));
    assertFalse(new ImageDifference.SameBytes().differs());
    assertEquals(ImageLevel.SAME_BYTES, thumb(CARD, CARD, Depth.STRUCTURE).level().orElseThrow());
  }

  @Test
  void theSameBytesInAnotherShapeAreAnotherImage() {
    SampleCard turned = CARD.with(THUMB, draft -> draft.with(6, "24").with(7, "32"));
    assertEquals(new ImageDifference.DifferentSize(32, 24, 24, 32), difference(CARD, turned));
    RecordPair pair = thumb(CARD, turned, Depth.IMAGES);
    assertEquals(ImageLevel.DIFFERENT_PIXELS, pair.level().orElseThrow());
    assertTrue(pair.differs());
  }

  @Test
  void theSamePixelsInAnotherFormatAreTheSamePixels() {
    byte[] png = PngWriter.encode(GrayImage.owning(WIDTH, HEIGHT, PIXELS), Optional.empty());
    SampleCard coded = CARD.with(THUMB, draft -> RuleExamples.data(draft.with(11, "PNG"), png));
    assertEquals(new ImageDifference.SamePixels(), difference(CARD, coded));
    assertEquals(ImageLevel.SAME_PIXELS, thumb(CARD, coded, Depth.IMAGES).level().orElseThrow());
    assertTrue(thumb(CARD, coded, Depth.IMAGES).differs());
  }

  @Test
  void pixelsThatDifferAreCountedAndMeasured() {
    byte[] other = PIXELS.clone();
    other[10] = (byte) ((other[10] & 0xFF) + 3);
    other[20] = (byte) ((other[20] & 0xFF) - 5);
    ImageDifference.DifferentPixels pixels =
        (ImageDifference.DifferentPixels) difference(CARD, raw(other));
    assertEquals(5, pixels.largest());
    assertEquals(2, pixels.pixels());
    assertEquals(768, pixels.ofPixels());
    assertEquals(8.0 / 768, pixels.mean(), 1e-12);
    assertEquals(2.0 / 768, pixels.share(), 1e-12);
    assertTrue(pixels.isSameCapture());
    assertEquals(
        ImageLevel.SAME_CAPTURE, thumb(CARD, raw(other), Depth.IMAGES).level().orElseThrow());
  }

  /** The correlation of the gray levels, worked out by hand from two halves of an image. */
  @Test
  void agreementIsTheCorrelationOfTheGrayLevels() {
    assertEquals(1, agreement(halves(10, 20), halves(30, 50)), 1e-12);
    assertEquals(-1, agreement(halves(10, 20), halves(50, 30)), 1e-12);
    assertEquals(0, agreement(halves(10, 10), halves(30, 50)), 1e-12);
    assertEquals(0, agreement(halves(10, 20), halves(50, 50)), 1e-12);
    byte[] quarters = halves(10, 20);
    for (int i = 0; i < quarters.length / 4; i++) {
      quarters[i] = 20;
    }
    // Three quarters at 20 against halves: covariance 1/8, variances 3/16 and 1/4.
    assertEquals(0.125 / Math.sqrt(3.0 / 16 / 4), agreement(halves(10, 20), quarters), 1e-12);
  }

  private static byte[] halves(int first, int second) {
    byte[] pixels = new byte[PIXELS.length];
    for (int i = 0; i < pixels.length; i++) {
      pixels[i] = (byte) (i < pixels.length / 2 ? first : second);
    }
    return pixels;
  }

  private static double agreement(byte[] first, byte[] second) {
    return ((ImageDifference.DifferentPixels) difference(raw(first), raw(second))).agreement();
  }

  @ParameterizedTest
  @CsvSource({"0.95, true", "0.9499, false", "1, true", "0, false"})
  void oneCaptureAgreesInNineteenOfTwentyParts(double agreement, boolean same) {
    assertEquals(
        same, new ImageDifference.DifferentPixels(9, 1, 10, 100, agreement).isSameCapture());
  }

  @Test
  void atStructureDepthNothingIsOpened() {
    RecordPair pair = thumb(CARD, raw(changed(0, 9, 1)), Depth.STRUCTURE);
    assertEquals(new ImageDifference.NotOpened(), pair.image().orElseThrow());
    assertEquals(ImageLevel.CANNOT_BE_TOLD, pair.level().orElseThrow());
  }

  @Test
  void anImageThatCannotBeDecodedCannotBeCompared() {
    SampleCard broken = CARD.with(THUMB, draft -> draft.with(11, "WSQ20"));
    SampleCard other = broken.with(THUMB, draft -> RuleExamples.data(draft, new byte[] {9, 9}));
    assertEquals(new ImageDifference.NotDecoded(true, false), difference(CARD, other));
    assertEquals(new ImageDifference.NotDecoded(false, true), difference(other, CARD));
    assertEquals(ImageLevel.CANNOT_BE_TOLD, thumb(CARD, other, Depth.IMAGES).level().orElseThrow());
  }

  @Test
  void aRecordWithoutDataHasNoDifferenceOfImages() {
    SampleCard none = CARD.with(THUMB, draft -> draft.without(999));
    assertEquals(Optional.empty(), thumb(none, none, Depth.IMAGES).image());
    assertEquals(new ImageDifference.NotDecoded(true, false), difference(CARD, none));
  }

  @Test
  void onlyTheSameCaptureIsOneCapture() {
    for (ImageLevel level : ImageLevel.values()) {
      assertEquals(level.ordinal() <= 2, level.isSameCapture(), level.name());
    }
  }
}
