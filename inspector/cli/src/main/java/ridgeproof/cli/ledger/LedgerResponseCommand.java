package ridgeproof.cli.ledger;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import ridgeproof.cli.io.Console;
import ridgeproof.cli.option.LimitOptions;

/** Takes in what a bureau answered. */
@Command(
    name = "response",
    description =
        "Reads response files, explains them, says which submission of the ledger each "
            + "answers, and records them. A response can also be recorded with examine "
            + "--ledger.",
    footer = {
      "",
      "Examples:",
      "  ridgeproof ledger response office.ledger response.an2",
      "",
      "Exit status: 0 all accepted, 2 a submission was rejected, 3 a file is no response,",
      "64 wrong usage, 74 cannot be read or written."
    })
final class LedgerResponseCommand implements Callable<Integer> {

  @Mixin LedgerInput input;

  @Parameters(index = "1..*", arity = "1..*", paramLabel = "FILE", description = "response files")
  List<Path> files;

  @Mixin LimitOptions limits;

  private final Console console;

  LedgerResponseCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    return new LedgerWork(input, console).takeIn(files, limits);
  }
}
