package ridgeproof.report;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.comparison.IgnoredFields;
import ridgeproof.examination.comparison.TransactionComparison;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ImageExtraction;
import ridgeproof.imagery.DecodingLimits;
import ridgeproof.report.comparison.ComparisonHtml;
import ridgeproof.report.comparison.ComparisonJson;
import ridgeproof.report.comparison.ComparisonText;
import ridgeproof.report.data.FindingsCsv;
import ridgeproof.report.data.JsonReport;
import ridgeproof.report.data.SarifReport;
import ridgeproof.report.page.HtmlReport;
import ridgeproof.report.pdf.PdfOptions;
import ridgeproof.report.pdf.PdfReport;
import ridgeproof.report.summary.FolderSummary;
import ridgeproof.report.text.LayoutListing;
import ridgeproof.report.text.TextReport;
import ridgeproof.report.ticket.Ticket;
import ridgeproof.report.ticket.TicketRequest;
import ridgeproof.spec.layout.FieldNumber;

/**
 * One file, examined once, in every form that a report has.
 *
 * @param comparison of another card with this one
 */
public record Renderings(FileFacts file, FindingsReport report, TransactionComparison comparison) {

  public static final ToolFacts TOOL = new ToolFacts("0.1", "17, a maker", "a system 1.0");

  public static final ImageExtraction EXTRACTION =
      new ImageExtraction(Reports.TABLES, DecodingLimits.standard());

  private static final byte[] OTHER_BYTES = PilotCard.ascii().bytes();
  private static final FileFacts OTHER =
      new FileFacts("other.an2", OTHER_BYTES.length, "1".repeat(64));
  private static final FindingsReport OTHER_REPORT = Reports.examine(OTHER_BYTES, Depth.RIDGES);

  static Renderings of(String name, byte[] bytes) {
    FindingsReport report = Reports.examine(bytes, Depth.RIDGES);
    return new Renderings(
        new FileFacts(name, bytes.length, "0".repeat(64)), report, compare(OTHER_REPORT, report));
  }

  /**
   * By the name of the form: text, json, html, csv, sarif, summary, ticket and compare forms,
   * layout.
   */
  Map<String, String> with(RenderOptions options) {
    Map<String, String> forms = new LinkedHashMap<>();
    forms.put("text", TextReport.render(file, report, options));
    forms.put("json", JsonReport.render(file, report, options));
    forms.put("html", HtmlReport.render(file, report, options));
    forms.put("csv", csv(options));
    forms.put("sarif", sarif(options));
    FolderSummary summary =
        new FolderSummary(Reports.TABLES, options, List.of(new FieldNumber(2, 2102)));
    summary.add(file, report, "page.html");
    summary.add(new NotExamined(file.name(), "permission denied"));
    forms.put("summary", summary.page());
    Ticket ticket = Ticket.of(file, report, TOOL, TicketRequest.standard().withTime(Instant.EPOCH));
    forms.put("ticket", ticket.asText());
    forms.put("ticket markdown", ticket.asMarkdown());
    forms.put("ticket html", ticket.asHtml());
    forms.put("ticket json", ticket.asJson());
    forms.put("compare", ComparisonText.render(OTHER, file, comparison, options));
    forms.put("compare json", ComparisonJson.render(OTHER, file, comparison, options));
    forms.put("compare html", ComparisonHtml.render(OTHER, file, comparison, options));
    forms.put(
        "compare html with images",
        ComparisonHtml.render(
            OTHER, file, comparison, options, image -> EXTRACTION.decode(image).pixels()));
    forms.put("layout", LayoutListing.render(file, report.transaction(), Reports.TABLES, options));
    return forms;
  }

  private String csv(RenderOptions options) {
    StringWriter text = new StringWriter();
    try {
      new FindingsCsv(text, options).add(file, report);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  private String sarif(RenderOptions options) {
    StringWriter text = new StringWriter();
    try {
      SarifReport sarif = new SarifReport(Reports.TABLES, TOOL, text, options);
      sarif.add(file, report);
      sarif.end();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  /** The report as a PDF, which takes longer than all the others. */
  byte[] pdf(RenderOptions options) {
    return PdfReport.render(file, report, options, PdfOptions.standard());
  }

  public static TransactionComparison compare(byte[] first, byte[] second) {
    return compare(first, second, Depth.RIDGES);
  }

  public static TransactionComparison compare(byte[] first, byte[] second, Depth depth) {
    return compare(Reports.examine(first, depth), Reports.examine(second, depth));
  }

  static TransactionComparison compare(FindingsReport first, FindingsReport second) {
    return TransactionComparison.of(
        first, second, EXTRACTION, IgnoredFields.parse(IgnoredFields.STANDARD));
  }
}
