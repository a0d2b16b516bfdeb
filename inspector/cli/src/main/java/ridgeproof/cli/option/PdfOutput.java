package ridgeproof.cli.option;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import picocli.CommandLine.Option;
import ridgeproof.cli.io.CommandFailure;
import ridgeproof.cli.io.Console;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.imagery.GrayImage;
import ridgeproof.report.FileFacts;
import ridgeproof.report.RenderOptions;
import ridgeproof.report.pdf.PaperSize;
import ridgeproof.report.pdf.PdfOptions;
import ridgeproof.report.pdf.PdfReport;

/** What only a PDF is asked for, and where it may go. */
public final class PdfOutput {

  enum Size {
    a4,
    letter
  }

  @Option(names = "--paper", paramLabel = "SIZE", description = "pdf: a4 or letter (default: a4)")
  Size paper;

  @Option(
      names = "--generated-at",
      paramLabel = "TIME",
      converter = InstantConverter.class,
      description = "pdf: a time to print, such as 2026-03-02T10:15:00Z (default: none)")
  Instant generatedAt;

  /** Says before any work what cannot be done. */
  public void check(boolean pdf, List<Path> inputs, OutputOptions output, Console console) {
    if (!pdf && (paper != null || generatedAt != null)) {
      throw CommandFailure.usage("--paper and --generated-at require --format pdf");
    }
    if (pdf && inputs.size() > 1) {
      throw CommandFailure.usage(
          "--format pdf writes a report on one file, but " + inputs.size() + " are named");
    }
    if (pdf && output.output == null && console.terminal()) {
      throw CommandFailure.usage(
          "--format pdf does not write to a terminal; name a file with --output");
    }
  }

  public byte[] render(
      FileFacts file,
      FindingsReport report,
      RenderOptions rendering,
      Optional<Function<ExaminedImage, Optional<GrayImage>>> pixels) {
    PaperSize sheet =
        paper == null ? PaperSize.A4 : PaperSize.valueOf(paper.name().toUpperCase(Locale.ROOT));
    return PdfReport.render(
        file, report, rendering, new PdfOptions(sheet, Optional.ofNullable(generatedAt), pixels));
  }
}
