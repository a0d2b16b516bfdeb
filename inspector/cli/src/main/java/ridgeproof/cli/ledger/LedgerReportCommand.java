package ridgeproof.cli.ledger;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import ridgeproof.cli.io.Console;
import ridgeproof.cli.option.DateConverter;
import ridgeproof.cli.option.OutputOptions;

/** What a ledger shows over many files. */
@Command(
    name = "report",
    description =
        "Compares what the bureau answered with the verdicts before sending, and reports "
            + "acceptance, rejections, recaptures, and the health of the stations.",
    footer = {
      "",
      "Examples:",
      "  ridgeproof ledger report office.ledger",
      "  ridgeproof ledger report --format html --output ledger.html office.ledger",
      "",
      "Exit status: 0, 64 wrong usage, 74 cannot be read or written."
    })
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
      description =
          "a list of operators as the files name them, one on a line, so that the report "
              + "can name them; the ledger holds only their hash")
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
    return new LedgerReporting(this, console).run();
  }
}
