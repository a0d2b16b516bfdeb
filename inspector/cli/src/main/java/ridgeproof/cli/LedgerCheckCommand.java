package ridgeproof.cli;

import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import ridgeproof.ledger.store.LedgerStore;

/** Looks whether a ledger is sound. */
@Command(
    name = "check",
    description = "Checks that a ledger is sound: the file, its tables, and that no entry is torn.",
    footer = {"", "Exit status: 0 sound, 2 problems found, 64 wrong usage, 74 cannot be read."})
final class LedgerCheckCommand implements Callable<Integer> {

  private static final int PROBLEMS = 2;

  @Mixin LedgerInput input;

  private final Console console;

  LedgerCheckCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    List<String> problems = input.use(LedgerStore::check);
    long entries = input.use(LedgerStore::count);
    if (problems.isEmpty()) {
      console.print("The ledger is sound: " + Counted.of(entries, "entry", "entries") + ".");
      return ExitStatus.OK;
    }
    console.print(String.join("\n", problems));
    return PROBLEMS;
  }
}
