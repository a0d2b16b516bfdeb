package ridgeproof.cli.ledger;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import ridgeproof.cli.io.CommandFailure;
import ridgeproof.cli.io.Console;
import ridgeproof.cli.io.ExitStatus;
import ridgeproof.cli.io.IoErrorMessages;
import ridgeproof.ledger.KeyedHash;
import ridgeproof.ledger.report.LedgerPage;
import ridgeproof.ledger.report.LedgerReport;
import ridgeproof.ledger.report.LedgerText;
import ridgeproof.spec.SpecTables;

/** Makes and writes a report on a ledger. */
final class LedgerReporting {

  private final LedgerReportCommand command;
  private final Console console;

  LedgerReporting(LedgerReportCommand command, Console console) {
    this.command = command;
    this.console = console;
  }

  int run() {
    command.output.refuse(List.of());
    SpecTables tables = SpecTables.open();
    LocalDate last =
        command.until == null ? LocalDate.now(Clock.systemUTC()).plusDays(1) : command.until;
    LedgerReport report =
        new LedgerWork(command.input, console)
            .use((store, hash) -> LedgerReport.of(store, tables, names(hash), last));
    String text =
        command.format == LedgerReportCommand.Format.html
            ? LedgerPage.render(report)
            : LedgerText.render(report);
    command.output.write(text, console, List.of());
    return ExitStatus.OK;
  }

  private Map<String, String> names(KeyedHash hash) {
    Map<String, String> names = new HashMap<>();
    Path operators = command.operators;
    if (operators != null) {
      try {
        for (String line : Files.readAllLines(operators)) {
          if (!line.isBlank()) {
            names.put(hash.operator(line), line.strip());
          }
        }
      } catch (IOException e) {
        throw CommandFailure.inputOutput(IoErrorMessages.of(operators, e));
      }
    }
    return names;
  }
}
