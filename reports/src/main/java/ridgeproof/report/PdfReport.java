package ridgeproof.report;

import ridgeproof.examination.FindingsReport;

/**
 * The report as a document to file: tagged PDF with embedded fonts and nothing that acts. The same
 * file, report and options give the same bytes.
 */
public final class PdfReport {

  private PdfReport() {}

  /** The document; values longer than 240 characters are cut, and say so. */
  public static byte[] render(
      FileFacts file, FindingsReport report, RenderOptions options, PdfOptions pdf) {
    PdfPage page = new PdfContents(file, report, options, pdf).page();
    return PdfPress.print(Pages.paper(page), page.page().head().title());
  }
}
