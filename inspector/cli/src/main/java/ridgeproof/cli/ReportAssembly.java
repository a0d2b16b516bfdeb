package ridgeproof.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import ridgeproof.cli.ExamineCommand.Format;
import ridgeproof.examination.ExaminedImage;
import ridgeproof.examination.FindingsReport;
import ridgeproof.imagery.GrayImage;
import ridgeproof.report.FileFacts;
import ridgeproof.report.FindingsCsv;
import ridgeproof.report.HtmlReport;
import ridgeproof.report.JsonReport;
import ridgeproof.report.RenderOptions;
import ridgeproof.report.SarifReport;
import ridgeproof.report.TextReport;
import ridgeproof.spec.SpecTables;

/** Renders one report after the other, and joins those of several files as the format wants. */
final class ReportAssembly {

  private final Format format;
  private final RenderOptions rendering;
  private final Optional<Function<ExaminedImage, Optional<GrayImage>>> pixels;
  private final FindingsCsv csv;
  private final SarifReport sarif;
  private final List<String> rendered = new ArrayList<>();

  /**
   * @param pixels decodes images for the page; empty to leave them out
   */
  ReportAssembly(
      Format format,
      SpecTables tables,
      RenderOptions rendering,
      Optional<Function<ExaminedImage, Optional<GrayImage>>> pixels) {
    this.format = format;
    this.rendering = rendering;
    this.pixels = pixels;
    this.csv = new FindingsCsv(rendering);
    this.sarif = new SarifReport(tables, Version.facts(), rendering);
  }

  void add(FileFacts file, FindingsReport report) {
    switch (format) {
      case text -> rendered.add(TextReport.render(file, report, rendering));
      case json -> rendered.add(JsonReport.render(file, report, rendering));
      case html ->
          rendered.add(
              pixels
                  .map(decode -> HtmlReport.render(file, report, rendering, decode))
                  .orElseGet(() -> HtmlReport.render(file, report, rendering)));
      case csv -> csv.add(file, report);
      case sarif -> sarif.add(file, report);
    }
  }

  /** Several JSON reports make an array; one stands alone. */
  String text() {
    return switch (format) {
      case text -> String.join("\n" + "=".repeat(rendering.width()) + "\n\n", rendered);
      case json ->
          rendered.size() == 1 ? rendered.get(0) : "[" + String.join(",\n", rendered) + "]";
      case html -> rendered.get(0);
      case csv -> csv.text();
      case sarif -> sarif.text();
    };
  }
}
