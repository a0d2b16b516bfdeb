package ridgeproof.report.pdf;

import ridgeproof.examination.FindingsReport;
import ridgeproof.report.FileFacts;
import ridgeproof.report.RenderOptions;
import ridgeproof.report.page.Templates;
import ridgeproof.report.template.JtepdfGenerated;

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
    String xhtml = Templates.fill(output -> JtepdfGenerated.render(output, null, page));
    return PdfRenderer.print(xhtml, page.page().head().title());
  }
}
