package ridgeproof.report;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import ridgeproof.examination.Depth;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.ImageExtraction;
import ridgeproof.examination.comparison.IgnoredFields;
import ridgeproof.examination.comparison.TransactionComparison;
import ridgeproof.imagery.DecodingLimits;

/** One file in every form that a report has. */
final class Renderings {

  static final ToolFacts TOOL = new ToolFacts("0.1", "17, a maker", "a system 1.0");

  private static final byte[] OTHER = PilotCard.ascii().bytes();

  private Renderings() {}

  /** By the name of the form: text, json, html, csv, sarif, ticket and compare forms, layout. */
  static Map<String, String> of(String name, byte[] bytes, RenderOptions options) {
    FileFacts file = new FileFacts(name, bytes.length, "0".repeat(64));
    FindingsReport report = Reports.examine(bytes, Depth.IMAGES);
    Map<String, String> forms = new LinkedHashMap<>();
    forms.put("text", TextReport.render(file, report, options));
    forms.put("json", JsonReport.render(file, report, options));
    forms.put("html", HtmlReport.render(file, report, options));
    FindingsCsv csv = new FindingsCsv(options);
    csv.add(file, report);
    forms.put("csv", csv.text());
    SarifReport sarif = new SarifReport(Reports.TABLES, TOOL, options);
    sarif.add(file, report);
    forms.put("sarif", sarif.text());
    Ticket ticket = Ticket.of(file, report, TOOL, Optional.of(Instant.EPOCH));
    forms.put("ticket", ticket.asText());
    forms.put("ticket markdown", ticket.asMarkdown());
    forms.put("ticket html", ticket.asHtml());
    TransactionComparison comparison = compare(OTHER, bytes);
    FileFacts other = new FileFacts("other.an2", OTHER.length, "1".repeat(64));
    forms.put("compare", ComparisonText.render(other, file, comparison, options));
    forms.put("compare json", ComparisonJson.render(other, file, comparison, options));
    forms.put("layout", LayoutListing.render(file, report.transaction(), Reports.TABLES, options));
    return forms;
  }

  /** The report as a PDF, which takes longer than all the others. */
  static byte[] pdf(String name, byte[] bytes, RenderOptions options) {
    FileFacts file = new FileFacts(name, bytes.length, "0".repeat(64));
    FindingsReport report = Reports.examine(bytes, Depth.IMAGES);
    return PdfReport.render(file, report, options, PdfOptions.standard());
  }

  static TransactionComparison compare(byte[] first, byte[] second) {
    return TransactionComparison.of(
        Reports.examine(first, Depth.IMAGES),
        Reports.examine(second, Depth.IMAGES),
        new ImageExtraction(Reports.TABLES, DecodingLimits.standard()),
        IgnoredFields.parse(IgnoredFields.STANDARD));
  }
}
