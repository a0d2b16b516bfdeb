package ridgeproof.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import ridgeproof.cli.io.Console;
import ridgeproof.cli.io.ExitStatus;
import ridgeproof.cli.io.InputFile;
import ridgeproof.cli.option.DepthConverter;
import ridgeproof.cli.option.IgnoredFieldsConverter;
import ridgeproof.cli.option.LimitOptions;
import ridgeproof.cli.option.NamedProfile;
import ridgeproof.cli.option.OutputOptions;
import ridgeproof.examination.Examiner;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.comparison.IgnoredFields;
import ridgeproof.examination.comparison.TransactionComparison;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.examination.facts.ImageExtraction;
import ridgeproof.report.FileFacts;
import ridgeproof.report.RenderOptions;
import ridgeproof.report.comparison.ComparisonHtml;
import ridgeproof.report.comparison.ComparisonJson;
import ridgeproof.report.comparison.ComparisonText;
import ridgeproof.spec.SpecTables;

@Command(
    name = "compare",
    description = "Compares two transaction files and reports the differences.",
    footer = {
      "",
      "Examples:",
      "  ridgeproof compare old.an2 new.an2",
      "  ridgeproof compare --format html --output diff.html old.an2 new.an2",
      "",
      "Exit status: 0 no differences outside ignored fields, 1 some differences;",
      "64 invalid usage, 70 internal error, 74 input or output error."
    })
final class CompareCommand implements Callable<Integer> {

  private static final int WIDTH = 80;
  private static final int DIFFERENT = 1;

  enum Format {
    text,
    html,
    json
  }

  @Parameters(index = "0", paramLabel = "A", description = "the first transaction file")
  Path first;

  @Parameters(index = "1", paramLabel = "B", description = "the second transaction file")
  Path second;

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      defaultValue = "text",
      description = "text, html (a page, side by side), or json (default: text)")
  Format format;

  @Option(
      names = "--ignore",
      paramLabel = "FIELDS",
      defaultValue = IgnoredFields.STANDARD,
      converter = IgnoredFieldsConverter.class,
      description =
          "fields to ignore, such as 1.005,2.022; LEN is the length of every record, IDC its number"
              + " (default: "
              + IgnoredFields.STANDARD
              + ")")
  IgnoredFields ignored;

  @Option(
      names = "--depth",
      paramLabel = "DEPTH",
      defaultValue = "ridges",
      converter = DepthConverter.class,
      description =
          "structure: fields and image bytes; images: also pixels; ridges: also whether two"
              + " prints show the same finger (default: ridges)")
  Depth depth;

  @Option(
      names = "--profile",
      paramLabel = "NAME|FILE",
      description = "the set of prints that the bureau expects of both files, as in examine")
  String profile;

  @Option(names = "--show-personal", description = "show personal data unmasked")
  boolean showPersonal;

  @Option(
      names = "--with-images",
      description = "html: include the images that differ, which are personal data")
  boolean withImages;

  @Mixin OutputOptions output;

  @Mixin LimitOptions limits;

  private final Console console;

  CompareCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    output.refuse(List.of(first, second));
    SpecTables tables = SpecTables.open();
    Examiner examiner = new Examiner(tables, limits.reading());
    ExaminationOptions standard =
        ExaminationOptions.standard().withDepth(depth).withImageLimits(limits.decoding());
    ExaminationOptions options =
        profile == null ? standard : NamedProfile.applyTo(standard, profile, tables);
    InputFile a = InputFile.open(first, limits.maxFileSize);
    InputFile b = InputFile.open(second, limits.maxFileSize);
    FindingsReport before = examiner.examine(a.bytes(), options);
    FindingsReport after = examiner.examine(b.bytes(), options);
    ImageExtraction extraction = new ImageExtraction(tables, limits.decoding());
    TransactionComparison comparison = TransactionComparison.of(before, after, extraction, ignored);
    RenderOptions rendering =
        new RenderOptions(showPersonal, console.colour() && output.output == null, WIDTH);
    String text =
        switch (format) {
          case text -> ComparisonText.render(a.facts(), b.facts(), comparison, rendering);
          case html -> page(a.facts(), b.facts(), comparison, rendering, extraction);
          case json -> ComparisonJson.render(a.facts(), b.facts(), comparison, rendering);
        };
    output.write(text, console, List.of(first, second));
    return comparison.same() ? ExitStatus.OK : DIFFERENT;
  }

  private String page(
      FileFacts a,
      FileFacts b,
      TransactionComparison comparison,
      RenderOptions rendering,
      ImageExtraction extraction) {
    return withImages
        ? ComparisonHtml.render(
            a, b, comparison, rendering, image -> extraction.decode(image).pixels())
        : ComparisonHtml.render(a, b, comparison, rendering);
  }
}
