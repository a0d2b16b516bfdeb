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
import ridgeproof.cli.io.CommandFailure;
import ridgeproof.cli.io.Console;
import ridgeproof.cli.io.ExitStatus;
import ridgeproof.cli.io.InputFile;
import ridgeproof.cli.io.InputPaths;
import ridgeproof.cli.io.Inputs;
import ridgeproof.cli.io.Progress;
import ridgeproof.cli.ledger.LedgerOptions;
import ridgeproof.cli.ledger.LedgerRecording;
import ridgeproof.cli.option.ExaminationMixin;
import ridgeproof.cli.option.FieldNumberConverter;
import ridgeproof.cli.option.LimitOptions;
import ridgeproof.cli.option.OutputOptions;
import ridgeproof.cli.option.PdfOutput;
import ridgeproof.cli.option.SchemaFolder;
import ridgeproof.cli.reporting.FailOn;
import ridgeproof.cli.reporting.JoinedReports;
import ridgeproof.cli.reporting.PageFolder;
import ridgeproof.cli.reporting.ParallelExamination;
import ridgeproof.cli.reporting.ReportFormat;
import ridgeproof.cli.reporting.ReportSink;
import ridgeproof.cli.reporting.ReportWriter;
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
import ridgeproof.report.words.Counted;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.rule.Severity;

@Command(
    name = "examine",
    description = "Checks transaction files and reports what to do before sending.",
    footer = {
      "",
      "Examples:",
      "  ridgeproof examine card.an2",
      "  ridgeproof examine --profile rolled-card card.an2",
      "  ridgeproof examine --format html --output report.html card.an2",
      "  ridgeproof examine --format html --output-dir reports outbox",
      "",
      "Exit status: 0 READY, 1 REVIEW, 2 HOLD, 3 UNREADABLE; the worst one for several files.",
      "64 invalid usage, 70 internal error, 74 input or output error."
    })
final class ExamineCommand implements Callable<Integer> {

  private static final int WIDTH = 80;

  @Parameters(
      paramLabel = "FILE",
      arity = "1..*",
      description = "transaction files, or folders to search for them; - reads standard input")
  List<String> files;

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      defaultValue = "text",
      description =
          "text; html (a page for one file, or with --output-dir for each); pdf (one file);"
              + " json (an array for several files); csv (a row for each finding); sarif"
              + " (default: text)")
  ReportFormat format;

  @Mixin ExaminationMixin choices;

  @Option(names = "--show-personal", description = "show personal data unmasked")
  boolean showPersonal;

  @Option(
      names = "--all-findings",
      description =
          "json, csv, sarif: list every place of a repeated fault, and findings that only"
              + " follow from others; html, pdf: open the notes and the fields of every record")
  boolean allFindings;

  @Option(
      names = "--schemas",
      paramLabel = "DIR",
      description =
          "check transactions in XML against the schemas in this folder too, such as those "
              + "of the FBI EBTS exchange package; nothing is fetched from elsewhere")
  Path schemas;

  @Option(
      names = "--second-decoder",
      description = "also decode WSQ images with a second decoder, and report differences")
  boolean secondDecoder;

  @Option(
      names = "--with-images",
      description = "html, pdf: include the images, which are personal data")
  boolean withImages;

  @Option(names = "--per-file", description = "csv: one row for each file instead of each finding")
  boolean perFile;

  @Option(
      names = "--fail-on",
      paramLabel = "LEVEL",
      description =
          "exit status 0 unless a finding is at least this severe: BLOCKING, LIKELY, "
              + "ADVICE or NOTE; 3 for an unreadable file in any case (default: by the verdict)")
  Severity failOn;

  @Option(
      names = "--output-dir",
      paramLabel = "DIR",
      description =
          "html: write a page for each file to this folder, and a summary as index.html;"
              + " the folder is created if needed")
  Path outputFolder;

  @Option(
      names = "--operator-field",
      paramLabel = "FIELD",
      converter = FieldNumberConverter.class,
      description =
          "summary, ledger: the agency's own field that names the operator, such as 2.2102;"
              + " no published field does")
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
    Examiner examiner =
        new Examiner(
            tables, limits.reading(), Optional.ofNullable(schemas).map(SchemaFolder::open));
    Inputs inputs = InputPaths.expand(files, tables);
    List<Path> paths = inputs.files();
    if (format == ReportFormat.html && outputFolder == null && paths.size() > 1) {
      throw CommandFailure.usage(
          "--format html writes a page for one file, but "
              + paths.size()
              + " are named; --output-dir DIR writes a page for each");
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
        Progress progress = Progress.of(console, "examine", paths.size());
        ParallelExamination results =
            new ParallelExamination(
                paths,
                path -> examine(path, examiner, options),
                ParallelExamination.workers(paths.size()))) {
      for (Path path : paths) {
        ParallelExamination.Result result = results.next();
        progress.pause();
        worst = Math.max(worst, report(path, result, reports, recording));
        progress.step();
      }
      inputs.others().forEach(other -> reports.add(notExamined(other.path(), other.reason())));
      reports.end();
    }
    if (!inputs.others().isEmpty() && format == ReportFormat.sarif) {
      console.complain(
          inputs.others().size()
              + " of "
              + Counted.of(inputs.count(), "file")
              + (inputs.others().size() == 1 ? " was not examined" : " were not examined"));
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
    RenderOptions rendering =
        new RenderOptions(showPersonal, false, WIDTH).withEveryFinding(allFindings);
    byte[] document = pdf.render(file.facts(), report, rendering, pixels(tables));
    output.write(document, console, List.of(path));
    recording.add(file, report);
    return new FailOn(Optional.ofNullable(failOn)).status(report);
  }

  private void refuseWhatContradicts() {
    if (outputFolder != null && format != ReportFormat.html) {
      throw CommandFailure.usage("--output-dir requires --format html");
    }
    if (outputFolder != null && output.output != null) {
      throw CommandFailure.usage("--output cannot be combined with --output-dir");
    }
    if (perFile && format != ReportFormat.csv) {
      throw CommandFailure.usage("--per-file requires --format csv");
    }
    if (perFile && allFindings) {
      throw CommandFailure.usage("--per-file cannot be combined with --all-findings");
    }
    if (allFindings && format == ReportFormat.text) {
      throw CommandFailure.usage("--all-findings requires --format json, csv, sarif, html, or pdf");
    }
    if (outputFolder == null && !operatorFields.isEmpty() && !ledger.isWanted()) {
      throw CommandFailure.usage("--operator-field requires --output-dir or --ledger");
    }
  }

  /** One file that cannot be opened does not keep the others from being examined. */
  private ParallelExamination.Result examine(
      Path path, Examiner examiner, ExaminationOptions options) {
    try {
      InputFile file = InputFile.open(path, limits.maxFileSize);
      return new ParallelExamination.Result.Examined(file, examiner.examine(file.bytes(), options));
    } catch (CommandFailure failure) {
      return new ParallelExamination.Result.Failed(failure);
    }
  }

  /** In the order of the files, so that the second use of a control number is the later one. */
  private int report(
      Path path, ParallelExamination.Result result, ReportSink reports, LedgerRecording recording) {
    if (result instanceof ParallelExamination.Result.Examined examined) {
      FindingsReport report =
          controlNumbers.check(examined.file().facts().name(), examined.report());
      try {
        reports.add(examined.file(), report);
      } catch (OutOfMemoryError e) {
        return unexamined(path, CommandFailure.outOfMemory(path.toString()), reports);
      }
      recording.add(examined.file(), report);
      return new FailOn(Optional.ofNullable(failOn)).status(report);
    }
    return unexamined(path, ((ParallelExamination.Result.Failed) result).failure(), reports);
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
          ReportWriter.pages(rendering, pixels(tables)),
          new FolderSummary(tables, rendering, operatorFields),
          output.overwrite);
    }
    return new JoinedReports(
        output.open(console, paths),
        target ->
            ReportWriter.of(
                format,
                tables,
                rendering,
                pixels(tables),
                target.writer(),
                inputs.count() > 1,
                perFile));
  }

  private Optional<Function<ExaminedImage, Optional<GrayImage>>> pixels(SpecTables tables) {
    if (!withImages) {
      return Optional.empty();
    }
    ImageExtraction extraction = new ImageExtraction(tables, limits.decoding());
    return Optional.of(image -> extraction.decode(image).pixels());
  }
}
