package ridgeproof.cli.ledger;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import ridgeproof.cli.io.Console;

/** Looks whether a ledger is sound. */
@Command(
    name = "check",
    description = "Checks that a ledger is sound: the file, its tables, and that no entry is torn.",
    footer = {
      "",
      "Examples:",
      "  ridgeproof ledger check office.ledger",
      "",
      "Exit status: 0 sound, 2 problems found, 64 wrong usage, 74 cannot be read."
    })
final class LedgerCheckCommand implements Callable<Integer> {

  @Mixin LedgerInput input;

  private final Console console;

  LedgerCheckCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    return new LedgerWork(input, console).check();
  }
}
