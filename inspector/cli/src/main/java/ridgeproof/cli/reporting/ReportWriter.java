package ridgeproof.cli.reporting;

import java.io.IOException;
import java.io.Writer;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Collectors;
import ridgeproof.cli.io.Version;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.imagery.GrayImage;
import ridgeproof.report.FileAccount;
import ridgeproof.report.FileFacts;
import ridgeproof.report.RenderOptions;
import ridgeproof.report.data.FindingsCsv;
import ridgeproof.report.data.JsonReport;
import ridgeproof.report.data.SarifReport;
import ridgeproof.report.page.HtmlReport;
import ridgeproof.report.summary.FilesCsv;
import ridgeproof.report.summary.FolderDigest;
import ridgeproof.report.text.TextReport;
import ridgeproof.spec.SpecTables;

/** Writes one report after the other, joined as the format wants; none is kept. */
public record ReportWriter(Adding adding, Ending ending) {

  /** Writes a report. */
  interface Adding {
    public void add(FileFacts file, FindingsReport report) throws IOException;
  }

  /** Writes what follows the last report. */
  interface Ending {
    public void end(FileAccount account) throws IOException;
  }

  /**
   * Only what the format needs is made, and its classes loaded.
   *
   * @param pixels decodes images for the page; empty to leave them out
   * @param out where the reports go
   * @param several whether JSON reports are to stand in an array, and text ends with a summary; one
   *     report stands alone
   * @param byFile whether csv has a row for each file instead of each finding
   */
  public static ReportWriter of(
      ReportFormat format,
      SpecTables tables,
      RenderOptions rendering,
      Optional<Function<ExaminedImage, Optional<GrayImage>>> pixels,
      Writer out,
      boolean several,
      boolean byFile)
      throws IOException {
    return switch (format) {
      case text -> {
        FolderDigest digest = new FolderDigest();
        yield oneByOne(
            (file, report) -> {
              digest.add(file, report);
              return TextReport.render(file, report, rendering);
            },
            new Joints("", "\n" + "=".repeat(rendering.width()) + "\n\n", ""),
            account -> several ? digest.text(account) : "",
            out);
      }
      case json ->
          oneByOne(
              (file, report) -> JsonReport.render(file, report, rendering),
              several ? new Joints("[", ",\n", "]\n") : new Joints("", "\n", "\n"),
              ReportWriter::jsonOthers,
              out);
      case html -> oneByOne(pages(rendering, pixels), new Joints("", "", ""), account -> "", out);
      case csv -> {
        if (byFile) {
          FilesCsv csv = new FilesCsv(out);
          yield new ReportWriter(csv::add, account -> csv.add(account.others()));
        }
        FindingsCsv csv = new FindingsCsv(out, rendering);
        yield new ReportWriter(csv::add, account -> csv.add(account.others()));
      }
      case sarif -> {
        SarifReport sarif = new SarifReport(tables, Version.facts(), out, rendering);
        yield new ReportWriter(
            sarif::add,
            account -> {
              sarif.end();
              out.write("\n");
            });
      }
      case pdf -> throw new IllegalArgumentException("a PDF is not text");
    };
  }

  /** Renders the page of a file. */
  public static BiFunction<FileFacts, FindingsReport, String> pages(
      RenderOptions rendering, Optional<Function<ExaminedImage, Optional<GrayImage>>> pixels) {
    return (file, report) ->
        pixels
            .map(decode -> HtmlReport.render(file, report, rendering, decode))
            .orElseGet(() -> HtmlReport.render(file, report, rendering));
  }

  private static String jsonOthers(FileAccount account) {
    return account.others().stream().map(FileAccount::json).collect(Collectors.joining(",\n"));
  }

  /** What stands before the first report, between two and after the last. */
  private record Joints(String before, String between, String after) {}

  private static ReportWriter oneByOne(
      BiFunction<FileFacts, FindingsReport, String> render,
      Joints joints,
      Function<FileAccount, String> others,
      Writer out) {
    boolean[] begun = new boolean[1];
    return new ReportWriter(
        (file, report) -> {
          out.write(begun[0] ? joints.between() : joints.before());
          begun[0] = true;
          out.write(render.apply(file, report));
        },
        account -> {
          String rest = others.apply(account);
          out.write(rest.isEmpty() ? "" : joints.between() + rest);
          out.write(joints.after());
        });
  }

  public void add(FileFacts file, FindingsReport report) throws IOException {
    adding.add(file, report);
  }

  public void end(FileAccount account) throws IOException {
    ending.end(account);
  }
}
