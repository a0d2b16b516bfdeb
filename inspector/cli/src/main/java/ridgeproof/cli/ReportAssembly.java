package ridgeproof.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Supplier;
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
record ReportAssembly(BiConsumer<FileFacts, FindingsReport> adding, Supplier<String> joined) {

  /**
   * Only what the format needs is made, and its classes loaded.
   *
   * @param pixels decodes images for the page; empty to leave them out
   */
  static ReportAssembly of(
      Format format,
      SpecTables tables,
      RenderOptions rendering,
      Optional<Function<ExaminedImage, Optional<GrayImage>>> pixels) {
    return switch (format) {
      case text ->
          oneByOne(
              (file, report) -> TextReport.render(file, report, rendering),
              texts -> String.join("\n" + "=".repeat(rendering.width()) + "\n\n", texts));
      case json ->
          oneByOne(
              (file, report) -> JsonReport.render(file, report, rendering), ReportAssembly::array);
      case html ->
          oneByOne(
              (file, report) ->
                  pixels
                      .map(decode -> HtmlReport.render(file, report, rendering, decode))
                      .orElseGet(() -> HtmlReport.render(file, report, rendering)),
              pages -> String.join("", pages));
      case csv -> {
        FindingsCsv csv = new FindingsCsv(rendering);
        yield new ReportAssembly(csv::add, csv::text);
      }
      case sarif -> {
        SarifReport sarif = new SarifReport(tables, Version.facts(), rendering);
        yield new ReportAssembly(sarif::add, sarif::text);
      }
      case pdf -> throw new IllegalArgumentException("a PDF is not text");
    };
  }

  private static ReportAssembly oneByOne(
      BiFunction<FileFacts, FindingsReport, String> render, Function<List<String>, String> join) {
    List<String> rendered = new ArrayList<>();
    return new ReportAssembly(
        (file, report) -> rendered.add(render.apply(file, report)), () -> join.apply(rendered));
  }

  /** Several JSON reports make an array; one stands alone. */
  private static String array(List<String> reports) {
    return reports.size() == 1 ? reports.get(0) : "[" + String.join(",\n", reports) + "]";
  }

  void add(FileFacts file, FindingsReport report) {
    adding.accept(file, report);
  }

  String text() {
    return joined.get();
  }
}
