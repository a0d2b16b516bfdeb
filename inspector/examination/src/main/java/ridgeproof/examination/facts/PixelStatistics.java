package ridgeproof.examination.facts;

import java.util.Optional;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.ImageFormat;
import ridgeproof.imagery.header.ImageHeaders;
import ridgeproof.imagery.measure.GrayHistogram;
import ridgeproof.imagery.measure.GrayLevelStatistics;
import ridgeproof.imagery.platen.PlatenFacts;
import ridgeproof.transaction.record.ByteSource;

/**
 * What is kept of decoded pixels, so that memory is bounded by the largest image and not by the
 * file.
 *
 * @param width pixels
 * @param height pixels
 * @param grayLevels how many different gray levels occur, 1 to 256
 * @param darkest gray level
 * @param brightest gray level
 * @param print what is measured of friction ridges; empty for other images
 * @param hidden the codestream that the pixels are, taken as bytes
 * @param second what another decoder made of the same codestream, where it was asked
 * @param platen what is seen of the platen, where it was asked
 */
public record PixelStatistics(
    int width,
    int height,
    int grayLevels,
    int darkest,
    int brightest,
    Optional<GrayLevelStatistics> print,
    Optional<ImageFormat> hidden,
    Optional<SecondDecoding> second,
    Optional<PlatenFacts> platen) {

  private static final int BILEVEL = 2;

  /**
   * Measures the pixels.
   *
   * @param frictionRidge whether fingers, palms or soles are to be seen
   */
  public static PixelStatistics of(
      GrayImage image, boolean frictionRidge, Optional<SecondDecoding> second) {
    Optional<GrayLevelStatistics> print =
        frictionRidge ? Optional.of(GrayLevelStatistics.of(image)) : Optional.empty();
    GrayHistogram grays =
        print.map(GrayLevelStatistics::all).orElseGet(() -> GrayHistogram.of(image));
    return new PixelStatistics(
        image.width(),
        image.height(),
        grays.levels(1),
        grays.quantile(0),
        grays.quantile(1),
        print,
        hidden(image),
        second,
        Optional.empty());
  }

  /** The same with what is seen of the platen. */
  PixelStatistics withPlaten(PlatenFacts seen) {
    return new PixelStatistics(
        width, height, grayLevels, darkest, brightest, print, hidden, second, Optional.of(seen));
  }

  /**
   * Whether there is a print of more than black and white.
   *
   * @param blankShare part of the image below which it shows nothing
   */
  public boolean showsPrint(double blankShare) {
    return grayLevels > BILEVEL && isMarked(blankShare);
  }

  /** Whether there is a print, of black and white alone too. */
  public boolean isMarked(double blankShare) {
    return print.map(GrayLevelStatistics::markedShare).orElse(0.0) >= blankShare;
  }

  /** A few pixels may look like a marker by chance; a size behind it does not come by chance. */
  private static Optional<ImageFormat> hidden(GrayImage image) {
    ByteSource bytes = ByteSource.of(image.asBuffer());
    return ImageHeaders.formatOf(bytes) == ImageFormat.RAW
        ? Optional.empty()
        : Optional.of(ImageHeaders.read(bytes))
            .filter(header -> header.width() > 0 && header.height() > 0)
            .map(header -> header.format());
  }
}
