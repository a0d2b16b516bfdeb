package ridgeproof.cli.ledger;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import ridgeproof.cli.io.Console;
import ridgeproof.cli.option.OutputOptions;

/** Writes the entries of a ledger for another program. */
@Command(
    name = "export",
    description = "Writes every entry of a ledger as a line of JSON, the oldest first.",
    footer = {
      "",
      "Examples:",
      "  ridgeproof ledger export --output entries.jsonl office.ledger",
      "",
      "Exit status: 0, 64 wrong usage, 74 cannot be read or written."
    })
final class LedgerExportCommand implements Callable<Integer> {

  @Mixin LedgerInput input;

  @Mixin OutputOptions output;

  private final Console console;

  LedgerExportCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    return new LedgerWork(input, console).export(output);
  }
}
