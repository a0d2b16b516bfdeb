package ridgeproof.imagery.wsq;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.wsq.TestImages.Content;
import ridgeproof.transaction.record.ByteSource;

class WsqRoundTripProperties {

  /**
   * Bin widths follow from the variance in the middle of each subband, so that detail which only
   * the borders have may be dropped.
   */
  private static final int BORDER = 20;

  /** Below this the other decoder's reflection at the borders reaches past its smallest bands. */
  private static final int MIN_SIDE_OF_OTHER_DECODER = 82;

  @Property(tries = 400)
  void everySmallSizeGivesACompleteImageOfThatSize(
      @ForAll @IntRange(min = 1, max = 70) int width,
      @ForAll @IntRange(min = 1, max = 70) int height,
      @ForAll Content content,
      @ForAll @DoubleRange(min = 0.1, max = 16) double rate,
      @ForAll long seed) {
    decoded(TestImages.of(content, width, height, seed), rate);
  }

  @Property(tries = 60)
  void longNarrowSizesGiveACompleteImage(
      @ForAll @IntRange(min = 1, max = 20) int narrow,
      @ForAll @IntRange(min = 500, max = 5000) int length,
      @ForAll boolean upright,
      @ForAll Content content,
      @ForAll long seed) {
    int width = upright ? narrow : length;
    int height = upright ? length : narrow;
    decoded(TestImages.of(content, width, height, seed), 2.25);
  }

  @Property(tries = 25)
  void anotherDecoderSeesTheSameImage(
      @ForAll @IntRange(min = MIN_SIDE_OF_OTHER_DECODER, max = 400) int width,
      @ForAll @IntRange(min = MIN_SIDE_OF_OTHER_DECODER, max = 400) int height,
      @ForAll Content content,
      @ForAll @DoubleRange(min = 0.2, max = 5) double rate,
      @ForAll long seed) {
    byte[] bytes =
        WsqEncoder.encode(
            TestImages.of(content, width, height, seed), new WsqEncoding(rate, 500, 0));
    byte[] ours = WsqDecoder.decode(ByteSource.of(bytes)).image().orElseThrow().toArray();
    byte[] other = new org.jnbis.internal.WsqDecoder().decode(bytes).getPixels();
    assertTrue(TestImages.largestDifference(ours, other) <= 1);
  }

  @Property(tries = 60)
  void ridgesAtAHighRateComeBackNearlyUnchanged(
      @ForAll @IntRange(min = 100, max = 400) int width,
      @ForAll @IntRange(min = 100, max = 400) int height,
      @ForAll("smooth") Content content,
      @ForAll long seed) {
    GrayImage image = TestImages.of(content, width, height, seed);
    byte[] back = decoded(image, 6);
    double psnr = TestImages.psnr(image.toArray(), back);
    assertTrue(psnr > 28, () -> psnr + " dB");
    int inside = TestImages.largestDifferenceInside(image, back, BORDER);
    assertTrue(inside <= 12, () -> inside + " gray levels");
  }

  @Provide
  Arbitrary<Content> smooth() {
    return Arbitraries.of(Content.RIDGES, Content.GRADIENT, Content.BLANK);
  }

  @Property(tries = 3)
  void largeSizesGiveACompleteImage(
      @ForAll @IntRange(min = 1000, max = 2000) int width,
      @ForAll @IntRange(min = 1000, max = 2000) int height,
      @ForAll Content content,
      @ForAll long seed) {
    decoded(TestImages.of(content, width, height, seed), 0.75);
  }

  @Example
  void theLongestNarrowSizeComesBackNearlyUnchanged() {
    GrayImage image = TestImages.of(Content.RIDGES, 5000, 16, 5);
    assertTrue(TestImages.psnr(image.toArray(), decoded(image, 6)) > 30);
  }

  private static byte[] decoded(GrayImage image, double rate) {
    byte[] bytes = WsqEncoder.encode(image, new WsqEncoding(rate, 500, 0));
    WsqDecoding decoding = WsqDecoder.decode(ByteSource.of(bytes));
    assertEquals(List.of(), decoding.defects());
    assertTrue(decoding.isComplete());
    GrayImage back = decoding.image().orElseThrow();
    assertEquals(image.width(), back.width());
    assertEquals(image.height(), back.height());
    return back.toArray();
  }
}
