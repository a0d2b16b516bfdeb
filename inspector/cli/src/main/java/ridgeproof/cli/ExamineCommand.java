package ridgeproof.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import ridgeproof.examination.ExaminationOptions;
import ridgeproof.examination.ExaminedImage;
import ridgeproof.examination.Examiner;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.ImageExtraction;
import ridgeproof.imagery.GrayImage;
import ridgeproof.report.RenderOptions;
import ridgeproof.spec.SpecTables;

@Command(
    name = "examine",
    description = "Reads transaction files, checks them and says what to do before sending.",
    footer = {
      "",
      "Exit status: 0 READY, 1 REVIEW, 2 HOLD, 3 UNREADABLE; for several files the worst.",
      "64 wrong usage, 70 a defect of Ridgeproof, 74 a file cannot be read or written."
    })
final class ExamineCommand implements Callable<Integer> {

  private static final int WIDTH = 80;

  enum Format {
    text,
    json,
    html,
    csv,
    sarif,
    pdf
  }

  @Parameters(
      paramLabel = "FILE",
      arity = "1..*",
      description = "transaction files; folders are searched for files that begin like one")
  List<String> files;

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      defaultValue = "text",
      description = {
        "text unless set; html for one file as a page, pdf as a document to file;",
        "json, csv or sarif for a program; csv has a row for each finding of all files"
      })
  Format format;

  @Mixin DepthAndProfile choices;

  @Option(
      names = "--show-personal",
      description = "show values that tell of a person; they are masked otherwise")
  boolean showPersonal;

  @Option(
      names = "--second-decoder",
      description = "decode WSQ images by a second decoder too and report the difference")
  boolean secondDecoder;

  @Option(
      names = "--with-images",
      description = "html, pdf: show the images themselves, which are personal data")
  boolean withImages;

  @Mixin PdfOutput pdf;

  @Mixin OutputOptions output;

  @Mixin LimitOptions limits;

  private final Console console;

  ExamineCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    SpecTables tables = SpecTables.open();
    ExaminationOptions options = choices.options(limits, tables).withSecondDecoder(secondDecoder);
    Examiner examiner = new Examiner(tables, limits.reading());
    RenderOptions rendering =
        new RenderOptions(showPersonal, console.colour() && output.output == null, WIDTH);
    List<Path> paths = InputPaths.expand(files);
    if (format == Format.html && paths.size() > 1) {
      throw CommandFailure.usage("html is a page for one file; these are " + paths.size());
    }
    pdf.check(format == Format.pdf, paths, output, console);
    if (format == Format.pdf) {
      InputFile file = InputFile.open(paths.get(0), limits.maxFileSize);
      FindingsReport report = examiner.examine(file.bytes(), options);
      output.write(pdf.render(file.facts(), report, rendering, pixels(tables)), console, paths);
      return ExitStatus.of(report.verdict());
    }
    ReportAssembly reports = ReportAssembly.of(format, tables, rendering, pixels(tables));
    int worst = ExitStatus.OK;
    for (Path path : paths) {
      InputFile file = InputFile.open(path, limits.maxFileSize);
      FindingsReport report = examiner.examine(file.bytes(), options);
      worst = Math.max(worst, ExitStatus.of(report.verdict()));
      reports.add(file.facts(), report);
    }
    output.write(reports.text(), console, paths);
    return worst;
  }

  private Optional<Function<ExaminedImage, Optional<GrayImage>>> pixels(SpecTables tables) {
    if (!withImages) {
      return Optional.empty();
    }
    ImageExtraction extraction = new ImageExtraction(tables, limits.decoding());
    return Optional.of(image -> extraction.decode(image).pixels());
  }
}
