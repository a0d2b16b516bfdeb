package ridgeproof.report;

import java.util.Optional;
import java.util.function.Function;
import ridgeproof.examination.ExaminedImage;
import ridgeproof.examination.comparison.TransactionComparison;
import ridgeproof.imagery.GrayImage;

/**
 * Two transactions side by side as one self-contained page: no script, nothing loaded, every value
 * from the files escaped.
 */
public final class ComparisonHtml {

  private ComparisonHtml() {}

  /** The page with outlines, at one scale, in place of the images. */
  public static String render(
      FileFacts first, FileFacts second, TransactionComparison comparison, RenderOptions options) {
    return Pages.comparison(
        new ComparisonContents(first, second, comparison, options, Optional.empty()).page());
  }

  /**
   * The page with those images that differ and their difference, which are personal data.
   *
   * @param pixels decodes an image; empty where it cannot be decoded
   */
  public static String render(
      FileFacts first,
      FileFacts second,
      TransactionComparison comparison,
      RenderOptions options,
      Function<ExaminedImage, Optional<GrayImage>> pixels) {
    return Pages.comparison(
        new ComparisonContents(first, second, comparison, options, Optional.of(pixels)).page());
  }
}
