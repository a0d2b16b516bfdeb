package ridgeproof.report.comparison;

import java.util.Optional;
import java.util.function.Function;
import ridgeproof.examination.comparison.TransactionComparison;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.imagery.GrayImage;
import ridgeproof.report.FileFacts;
import ridgeproof.report.RenderOptions;
import ridgeproof.report.page.Templates;
import ridgeproof.report.template.JtecomparisonGenerated;

/**
 * Two transactions side by side as one self-contained page: no script, nothing loaded, every value
 * from the files escaped.
 */
public final class ComparisonHtml {

  private ComparisonHtml() {}

  /** The page with outlines, at one scale, in place of the images. */
  public static String render(
      FileFacts first, FileFacts second, TransactionComparison comparison, RenderOptions options) {
    return render(
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
    return render(
        new ComparisonContents(first, second, comparison, options, Optional.of(pixels)).page());
  }

  private static String render(ComparisonPage page) {
    return Templates.fill(output -> JtecomparisonGenerated.render(output, null, page));
  }
}
