package ridgeproof.report.page;

import java.util.Optional;
import java.util.function.Function;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.imagery.GrayImage;
import ridgeproof.report.FileFacts;
import ridgeproof.report.RenderOptions;
import ridgeproof.report.template.JtepageGenerated;

/**
 * The report as one self-contained page: no script, nothing loaded, every value from the file
 * escaped.
 */
public final class HtmlReport {

  private HtmlReport() {}

  /** The page with an outline in place of each image. */
  public static String render(FileFacts file, FindingsReport report, RenderOptions options) {
    return render(new ReportModelBuilder(file, report, options, Optional.empty()).page());
  }

  /**
   * The page with the images themselves, which are personal data.
   *
   * @param pixels decodes an image; empty where it cannot be decoded
   */
  public static String render(
      FileFacts file,
      FindingsReport report,
      RenderOptions options,
      Function<ExaminedImage, Optional<GrayImage>> pixels) {
    return render(new ReportModelBuilder(file, report, options, Optional.of(pixels)).page());
  }

  private static String render(ReportModel page) {
    return Templates.fill(output -> JtepageGenerated.render(output, null, page));
  }
}
