package ridgeproof.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import ridgeproof.examination.Depth;
import ridgeproof.examination.ExaminationOptions;
import ridgeproof.examination.Examiner;
import ridgeproof.examination.FindingsReport;
import ridgeproof.report.JsonReport;
import ridgeproof.report.RenderOptions;
import ridgeproof.report.TextReport;
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
    json
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
      description = "text for a person or json for a program, text unless set")
  Format format;

  @Option(
      names = "--depth",
      paramLabel = "DEPTH",
      defaultValue = "images",
      converter = DepthConverter.class,
      description = "structure or images, images unless set")
  Depth depth;

  @Option(
      names = "--profile",
      paramLabel = "NAME|FILE",
      description =
          "what the bureau expects: rolled-card, identification-flats, or the file of an agency's"
              + " own profile such as examples/tidewater-pilots.toml; what the file itself implies"
              + " unless set")
  String profile;

  @Option(
      names = "--show-personal",
      description = "show values that tell of a person; they are masked otherwise")
  boolean showPersonal;

  @Mixin OutputOptions output;

  @Mixin LimitOptions limits;

  private final Console console;

  ExamineCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    SpecTables tables = SpecTables.open();
    ExaminationOptions options = options(tables);
    Examiner examiner = new Examiner(tables, limits.reading());
    RenderOptions rendering =
        new RenderOptions(showPersonal, console.colour() && output.output == null, WIDTH);
    List<Path> paths = InputPaths.expand(files);
    List<String> rendered = new ArrayList<>();
    int worst = ExitStatus.OK;
    for (Path path : paths) {
      InputFile file = InputFile.open(path, limits.maxFileSize);
      FindingsReport report = examiner.examine(file.bytes(), options);
      worst = Math.max(worst, ExitStatus.of(report.verdict()));
      rendered.add(
          switch (format) {
            case text -> TextReport.render(file.facts(), report, rendering);
            case json -> JsonReport.render(file.facts(), report, rendering);
          });
    }
    output.write(joined(rendered), console, paths);
    return worst;
  }

  /** Several JSON reports make an array; one stands alone. */
  private String joined(List<String> rendered) {
    if (rendered.size() == 1) {
      return rendered.get(0);
    }
    return switch (format) {
      case text -> String.join("\n" + "=".repeat(WIDTH) + "\n\n", rendered);
      case json -> "[" + String.join(",\n", rendered) + "]";
    };
  }

  private ExaminationOptions options(SpecTables tables) {
    ExaminationOptions options =
        ExaminationOptions.standard().withDepth(depth).withImageLimits(limits.decoding());
    return profile == null ? options : NamedProfile.applyTo(options, profile, tables);
  }
}
