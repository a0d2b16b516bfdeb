package ridgeproof.report.pdf;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** Prints XHTML as tagged PDF. */
final class PdfRenderer {

  private static final String PRODUCER = "Ridgeproof";
  private static final String IMAGE = "data:image/png;base64,";

  private PdfRenderer() {}

  /** The same XHTML and title give the same bytes. */
  static byte[] print(String xhtml, String title) {
    XRLog.setLoggingEnabled(false);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ReportFonts fonts = new ReportFonts();
        PDDocument document = new PDDocument();
        PdfBoxRenderer renderer = builder(document, fonts, xhtml).buildPdfRenderer()) {
      renderer.createPDFWithoutClosing();
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

  private static PdfRendererBuilder builder(PDDocument document, ReportFonts fonts, String xhtml)
      throws IOException {
    PdfRendererBuilder builder = new PdfRendererBuilder().usePDDocument(document);
    for (ReportFonts.Face face : ReportFonts.FACES) {
      PDType0Font font = PDType0Font.load(document, fonts.font(face), true);
      builder.useFont(
          new PDFontSupplier(font), face.family(), face.weight(), FontStyle.NORMAL, true);
    }
    for (ExternalResourceControlPriority when : ExternalResourceControlPriority.values()) {
      builder.useExternalResourceAccessControl((uri, type) -> uri.startsWith(IMAGE), when);
    }
    return builder
        .usePdfUaAccessibility(true)
        .withProducer(PRODUCER)
        .useUriResolver((base, uri) -> uri.startsWith(IMAGE) ? uri : null)
        .withHtmlContent(fonts.drawable(xhtml), "");
  }
}
