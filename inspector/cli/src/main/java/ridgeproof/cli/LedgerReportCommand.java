package ridgeproof.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import ridgeproof.ledger.KeyedHash;
import ridgeproof.ledger.report.LedgerPage;
import ridgeproof.ledger.report.LedgerReport;
import ridgeproof.ledger.report.LedgerText;
import ridgeproof.spec.SpecTables;

/** What a ledger shows over many files. */
@Command(
    name = "report",
    description = {
      "Compares what the bureau answered with the verdicts before sending, and reports acceptance,",
      "rejections, recaptures, and the health of the stations."
    },
    footer = {"", "Exit status: 0, 64 wrong usage, 74 cannot be read or written."})
final class LedgerReportCommand implements Callable<Integer> {

  enum Format {
    text,
    html
  }

  @Mixin LedgerInput input;

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      defaultValue = "text",
      description = "text, or html for a page with plots (default: text)")
  Format format;

  @Option(
      names = "--operators",
      paramLabel = "FILE",
      description = {
        "a list of operators as the files name them, one on a line, so that the report can name",
        "them; the ledger holds only their hash"
      })
  Path operators;

  @Option(
      names = "--until",
      paramLabel = "DATE",
      converter = DateConverter.class,
      description = "judge the stations as of this day (default: today)")
  LocalDate until;

  @Mixin OutputOptions output;

  private final Console console;

  LedgerReportCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    output.refuse(List.of());
    SpecTables tables = SpecTables.open();
    KeyedHash hash = input.place().hash();
    Map<String, String> names = names(hash);
    LocalDate last = until == null ? LocalDate.now(Clock.systemUTC()).plusDays(1) : until;
    LedgerReport report = input.use(store -> LedgerReport.of(store, tables, names, last));
    String text = format == Format.html ? LedgerPage.render(report) : LedgerText.render(report);
    output.write(text, console, List.of());
    return ExitStatus.OK;
  }

  private Map<String, String> names(KeyedHash hash) {
    Map<String, String> names = new HashMap<>();
    if (operators != null) {
      try {
        for (String line : Files.readAllLines(operators)) {
          if (!line.isBlank()) {
            names.put(hash.operator(line), line.strip());
          }
        }
      } catch (IOException e) {
        throw CommandFailure.inputOutput(IoWords.of(operators, e));
      }
    }
    return names;
  }
}
