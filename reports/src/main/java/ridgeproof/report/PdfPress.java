package ridgeproof.report;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;

/** Prints XHTML as tagged PDF. */
final class PdfPress {

  private static final String PRODUCER = "Ridgeproof";

  private PdfPress() {}

  /** The same XHTML and title give the same bytes. */
  static byte[] print(String xhtml, String title) {
    XRLog.setLoggingEnabled(false);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (PdfBoxRenderer renderer = builder(xhtml).buildPdfRenderer();
        PDDocument document = renderer.createPDFKeepOpen()) {
      PDDocumentInformation information = new PDDocumentInformation();
      information.setTitle(title);
      information.setProducer(PRODUCER);
      document.setDocumentInformation(information);
      document.getDocumentCatalog().setMetadata(null);
      // The identifier is made of this number and the information, not of the time.
      document.setDocumentId(0L);
      document.save(out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  private static PdfRendererBuilder builder(String xhtml) {
    PdfRendererBuilder builder = new PdfRendererBuilder();
    for (ReportFonts.Face face : ReportFonts.FACES) {
      builder.useFont(face::open, face.family(), face.weight(), FontStyle.NORMAL, true);
    }
    for (ExternalResourceControlPriority when : ExternalResourceControlPriority.values()) {
      builder.useExternalResourceAccessControl((uri, type) -> uri.startsWith("data:image/"), when);
    }
    return builder
        .usePdfUaAccessibility(true)
        .withProducer(PRODUCER)
        .useUriResolver((base, uri) -> uri.startsWith("data:image/") ? uri : null)
        .withHtmlContent(drawable(xhtml), "");
  }

  private static String drawable(String xhtml) {
    try (ReportFonts fonts = new ReportFonts()) {
      return fonts.drawable(xhtml);
    }
  }
}
