package ridgeproof.archive;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.apache.spark.sql.SparkSession;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import ridgeproof.archive.question.ArchiveAnswers;
import ridgeproof.archive.question.ArchivePage;
import ridgeproof.archive.question.ArchiveText;
import ridgeproof.archive.store.ArchiveTable;
import ridgeproof.cli.io.Console;
import ridgeproof.cli.io.ExitStatus;
import ridgeproof.cli.option.OutputOptions;
import ridgeproof.ledger.report.LedgerReport;
import ridgeproof.ledger.response.Reasons;
import ridgeproof.spec.SpecTables;

@Command(
    name = "report",
    mixinStandardHelpOptions = true,
    description = {
      "Answers questions on an archive: READY at the first time by station and month, commonest"
          + " findings, stations that drift, images under several control numbers, and scores by"
          + " device.",
      ""
    })
final class ArchiveReportCommand implements Callable<Integer> {

  /** The forms of the report. */
  enum Form {
    text,
    html
  }

  @Option(names = "--archive", paramLabel = "ADDRESS", required = true, description = "the archive")
  String archive;

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      defaultValue = "text",
      description = "text, or html for a page with plots (default: text)")
  Form format;

  @Mixin OutputOptions output;

  private final Console console;

  ArchiveReportCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    output.refuse(List.of());
    SparkSession spark = ArchiveSession.open();
    ArchiveTables tables = ArchiveTables.of(spark, archive);
    for (ArchiveTable table : ArchiveTable.values()) {
      tables.of(table).createOrReplaceTempView(table.folder());
    }
    SpecTables spec = SpecTables.open();
    LedgerReport.Names names = new LedgerReport.Names(Map.of(), new Reasons(spec), spec);
    ArchiveAnswers answers = ArchiveAnswers.of(spark, LocalDate.now(Clock.systemUTC()).plusDays(1));
    String text =
        format == Form.html
            ? ArchivePage.render(answers, names)
            : ArchiveText.render(answers, names);
    output.write(text, console, List.of());
    return ExitStatus.OK;
  }
}
