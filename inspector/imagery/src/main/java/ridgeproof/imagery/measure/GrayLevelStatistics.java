package ridgeproof.imagery.measure;

import java.util.Optional;
import java.util.OptionalInt;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.measure.ContrastBlocks.Kind;

/**
 * What is measured of a friction ridge image, small enough to keep when its pixels are gone.
 *
 * @param all gray levels of the whole image
 * @param print gray levels of the blocks that show ridges or something else of high contrast
 * @param fading gray levels of the blocks of low contrast
 * @param bare gray levels of the blocks that show nothing
 * @param padding lines of one gray level at the edges
 * @param ridges nothing where no ridges were found
 * @param enlargement whether it was scanned at half its resolution
 * @param emptyBand rows that were not transmitted
 * @param wraparound whether it begins in its middle
 */
public record GrayLevelStatistics(
    GrayHistogram all,
    GrayHistogram print,
    GrayHistogram fading,
    GrayHistogram bare,
    EdgePadding padding,
    Optional<RidgePeriod> ridges,
    Enlargement enlargement,
    EmptyBand emptyBand,
    Wraparound wraparound) {

  private static final double TAIL = 0.05;

  public static GrayLevelStatistics of(GrayImage image) {
    ContrastBlocks grid = ContrastBlocks.of(image);
    return new GrayLevelStatistics(
        grid.histogram(),
        grid.histogram(Kind.PRINT),
        grid.histogram(Kind.FADING),
        grid.histogram(Kind.BARE),
        EdgePadding.of(image),
        RidgePeriod.of(image, grid),
        Enlargement.of(image),
        EmptyBand.of(image),
        Wraparound.of(image));
  }

  /**
   * The share of the print whose gray level lies in the middle half between dark ridges and light
   * valleys, 0 to 1: the slopes of ridges, which an image of two gray levels does not have.
   */
  public double middleShare() {
    int dark = print.quantile(TAIL);
    int light = print.quantile(1 - TAIL);
    int quarter = (light - dark) / 4;
    return print.share(light - quarter) - print.share(dark + quarter);
  }

  /** Gray levels of everything that shows something. */
  public GrayHistogram marked() {
    return print.plus(fading);
  }

  /** The share of the image that shows something, 0 to 1. */
  public double markedShare() {
    return 1 - bareShare();
  }

  /** The share of the image that shows nothing, 0 to 1. */
  public double bareShare() {
    return (double) bare.total() / all.total();
  }

  /** The median gray level of what shows nothing. */
  public OptionalInt ground() {
    return bare.total() == 0 ? OptionalInt.empty() : OptionalInt.of(bare.quantile(0.5));
  }
}
