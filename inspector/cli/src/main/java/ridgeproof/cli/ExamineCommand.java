package ridgeproof.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.function.Function;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import ridgeproof.cli.io.CommandFailure;
import ridgeproof.cli.io.Console;
import ridgeproof.cli.io.ExitStatus;
import ridgeproof.cli.io.InputFile;
import ridgeproof.cli.io.InputPaths;
import ridgeproof.cli.io.Inputs;
import ridgeproof.cli.io.Progress;
import ridgeproof.cli.ledger.LedgerOptions;
import ridgeproof.cli.ledger.LedgerRecording;
import ridgeproof.cli.option.DepthAndProfile;
import ridgeproof.cli.option.FieldNumberConverter;
import ridgeproof.cli.option.LimitOptions;
import ridgeproof.cli.option.OutputOptions;
import ridgeproof.cli.option.PdfOutput;
import ridgeproof.cli.reporting.JoinedReports;
import ridgeproof.cli.reporting.PageFolder;
import ridgeproof.cli.reporting.ReportAssembly;
import ridgeproof.cli.reporting.ReportFormat;
import ridgeproof.cli.reporting.ReportSink;
import ridgeproof.examination.ControlNumbers;
import ridgeproof.examination.Examiner;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.ImageExtraction;
import ridgeproof.imagery.GrayImage;
import ridgeproof.report.NotExamined;
import ridgeproof.report.RenderOptions;
import ridgeproof.report.summary.FolderSummary;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.FieldNumber;

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
        "text unless set; html for one file as a page, or with --output-dir for many;",
        "pdf as a document to file; json, csv or sarif for a program: json of several",
        "files is an array, csv has a row for each finding of all files"
      })
  ReportFormat format;

  @Mixin DepthAndProfile choices;

  @Option(
      names = "--show-personal",
      description = "show values that tell of a person; they are masked otherwise")
  boolean showPersonal;

  @Option(
      names = "--all-findings",
      description = {
        "json, csv, sarif: list each place of a repeated fault by itself, and also the findings",
        "that are only consequences of another one"
      })
  boolean allFindings;

  @Option(
      names = "--second-decoder",
      description = "decode WSQ images by a second decoder too and report the difference")
  boolean secondDecoder;

  @Option(
      names = "--with-images",
      description = "html, pdf: show the images themselves, which are personal data")
  boolean withImages;

  @Option(
      names = "--output-dir",
      paramLabel = "DIR",
      description = {
        "html: write a page for each file into this folder, and a summary of all as index.html;",
        "the folder is made if need be"
      })
  Path outputFolder;

  @Option(
      names = "--operator-field",
      paramLabel = "FIELD",
      converter = FieldNumberConverter.class,
      description = {
        "summary, ledger: the field that tells who captured, such as an agency's own",
        "2.2102; no published field does"
      })
  List<FieldNumber> operatorFields = List.of();

  @Mixin LedgerOptions ledger;

  @Mixin PdfOutput pdf;

  @Mixin OutputOptions output;

  @Mixin LimitOptions limits;

  private final Console console;
  private final ControlNumbers controlNumbers = new ControlNumbers();

  ExamineCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    refuseWhatContradicts();
    SpecTables tables = SpecTables.open();
    ExaminationOptions options =
        choices
            .options(limits, tables)
            .withSecondDecoder(secondDecoder)
            .withPlaten(ledger.isWanted());
    Examiner examiner = new Examiner(tables, limits.reading());
    Inputs inputs = InputPaths.expand(files, tables);
    List<Path> paths = inputs.files();
    if (format == ReportFormat.html && outputFolder == null && paths.size() > 1) {
      throw CommandFailure.usage(
          "html is a page for one file; these are "
              + paths.size()
              + ": --output-dir DIR makes a page for each");
    }
    pdf.check(format == ReportFormat.pdf, paths, output, console);
    try (LedgerRecording recording = ledger.recording(tables, operatorFields)) {
      return format == ReportFormat.pdf
          ? writePdf(paths.get(0), examiner, options, tables, recording)
          : writeReports(inputs, examiner, options, tables, recording);
    }
  }

  private int writeReports(
      Inputs inputs,
      Examiner examiner,
      ExaminationOptions options,
      SpecTables tables,
      LedgerRecording recording) {
    List<Path> paths = inputs.files();
    int worst = ExitStatus.OK;
    try (ReportSink reports = sink(tables, inputs);
        Progress progress = progress(paths.size())) {
      for (Path path : paths) {
        worst = Math.max(worst, examine(path, examiner, options, reports, recording));
        progress.step();
      }
      inputs.others().forEach(other -> reports.add(notExamined(other.path(), other.reason())));
      reports.end();
    }
    if (!inputs.others().isEmpty() && format == ReportFormat.sarif) {
      console.complain(inputs.others().size() + " of " + inputs.count() + " files: not examined");
    }
    return worst;
  }

  private int writePdf(
      Path path,
      Examiner examiner,
      ExaminationOptions options,
      SpecTables tables,
      LedgerRecording recording) {
    output.refuse(List.of(path));
    InputFile file = InputFile.open(path, limits.maxFileSize);
    FindingsReport report = examiner.examine(file.bytes(), options);
    RenderOptions rendering = new RenderOptions(showPersonal, false, WIDTH);
    byte[] document = pdf.render(file.facts(), report, rendering, pixels(tables));
    output.write(document, console, List.of(path));
    recording.add(file, report);
    return ExitStatus.of(report.verdict());
  }

  private void refuseWhatContradicts() {
    if (outputFolder != null && format != ReportFormat.html) {
      throw CommandFailure.usage("--output-dir is for pages: --format html");
    }
    if (outputFolder != null && output.output != null) {
      throw CommandFailure.usage("--output and --output-dir exclude each other");
    }
    if (allFindings
        && !Set.of(ReportFormat.json, ReportFormat.csv, ReportFormat.sarif).contains(format)) {
      throw CommandFailure.usage("--all-findings is for --format json, csv or sarif");
    }
    if (outputFolder == null && !operatorFields.isEmpty() && !ledger.isWanted()) {
      throw CommandFailure.usage(
          "--operator-field is for the summary that --output-dir makes, and for --ledger");
    }
  }

  /** One file that cannot be opened does not keep the others from being examined. */
  private int examine(
      Path path,
      Examiner examiner,
      ExaminationOptions options,
      ReportSink reports,
      LedgerRecording recording) {
    InputFile file;
    FindingsReport report;
    try {
      file = InputFile.open(path, limits.maxFileSize);
      report = controlNumbers.check(file.facts().name(), examiner.examine(file.bytes(), options));
    } catch (CommandFailure failure) {
      return unexamined(path, failure, reports);
    } catch (OutOfMemoryError e) {
      return unexamined(path, CommandFailure.outOfMemory(path.toString()), reports);
    }
    reports.add(file, report);
    recording.add(file, report);
    return ExitStatus.of(report.verdict());
  }

  private int unexamined(Path path, CommandFailure failure, ReportSink reports) {
    console.complain(failure.getMessage());
    reports.add(notExamined(path, failure.reason(path)));
    return failure.status();
  }

  private static NotExamined notExamined(Path path, String reason) {
    return new NotExamined(String.valueOf(path.getFileName()), reason);
  }

  private ReportSink sink(SpecTables tables, Inputs inputs) {
    List<Path> paths = inputs.files();
    RenderOptions rendering =
        new RenderOptions(showPersonal, console.colour() && output.output == null, WIDTH)
            .withEveryFinding(allFindings);
    if (outputFolder != null) {
      return PageFolder.open(
          outputFolder,
          paths,
          ReportAssembly.pages(rendering, pixels(tables)),
          new FolderSummary(tables, rendering, operatorFields),
          output.overwrite);
    }
    return new JoinedReports(
        output.open(console, paths),
        target ->
            ReportAssembly.of(
                format, tables, rendering, pixels(tables), target.writer(), inputs.count() > 1));
  }

  /** Reports on the same terminal say themselves how far it is. */
  private Progress progress(int steps) {
    boolean reportsAreSeen = console.terminal() && output.output == null && outputFolder == null;
    return reportsAreSeen ? new Progress.Silent() : Progress.of(console, "examine", steps);
  }

  private Optional<Function<ExaminedImage, Optional<GrayImage>>> pixels(SpecTables tables) {
    if (!withImages) {
      return Optional.empty();
    }
    ImageExtraction extraction = new ImageExtraction(tables, limits.decoding());
    return Optional.of(image -> extraction.decode(image).pixels());
  }
}
