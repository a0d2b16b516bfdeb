package ridgeproof.cli.ledger;

import java.time.LocalDate;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import ridgeproof.cli.io.Console;
import ridgeproof.cli.option.DateConverter;

/** Removes old entries. */
@Command(
    name = "forget",
    description =
        "Removes the entries of the days before a date for good, with everything that "
            + "belongs to them; the file no longer holds them.",
    footer = {
      "",
      "Examples:",
      "  ridgeproof ledger forget --before 2025-01-01 office.ledger",
      "",
      "Exit status: 0, 64 wrong usage, 74 cannot be changed."
    })
final class LedgerForgetCommand implements Callable<Integer> {

  @Mixin LedgerInput input;

  @Option(
      names = "--before",
      paramLabel = "DATE",
      required = true,
      converter = DateConverter.class,
      description = "the first day that is kept, such as 2025-01-01")
  LocalDate before;

  private final Console console;

  LedgerForgetCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    return new LedgerWork(input, console).forget(before);
  }
}
