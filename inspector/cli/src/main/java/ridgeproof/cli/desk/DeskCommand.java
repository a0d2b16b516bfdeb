package ridgeproof.cli.desk;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import ridgeproof.cli.io.Console;
import ridgeproof.cli.ledger.LedgerToRead;
import ridgeproof.cli.option.ExaminationMixin;
import ridgeproof.cli.option.LimitOptions;
import ridgeproof.cli.option.PositiveConverter;

@Command(
    name = "desk",
    description = {
      "Opens a page in the browser of this machine: drop files, see what to do.",
      "",
      "Files stay in the memory of this machine. Nothing is sent anywhere, and nothing "
          + "is written to disk unless you save it."
    },
    footer = {
      "",
      "Examples:",
      "  ridgeproof desk",
      "  ridgeproof desk --watch outbox --profile rolled-card",
      "",
      "Exit status: 0 when the desk is closed."
    })
public final class DeskCommand implements Callable<Integer> {

  @Option(
      names = "--port",
      paramLabel = "N",
      defaultValue = "0",
      description = "port on the loopback address (default: any free port)")
  int port;

  @Option(
      names = "--keep",
      paramLabel = "MINUTES",
      defaultValue = "60",
      converter = PositiveConverter.class,
      description = "drop a file this long after anyone last opened it (default: 60 minutes)")
  int keepMinutes;

  @Option(
      names = "--watch",
      paramLabel = "DIR",
      description = "also show the files that appear in this folder; nothing is moved")
  Path watched;

  @ArgGroup(exclusive = false, heading = "%nWith a gate (see ridgeproof gate --help):%n")
  GateFolderOptions gateFolders;

  @Mixin LedgerToRead ledger;

  @Option(names = "--no-browser", description = "only print the address")
  boolean noBrowser;

  @Mixin ExaminationMixin choices;

  @Mixin LimitOptions limits;

  private final Console console;

  public DeskCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    return new OpenDesk(this, console).untilClosed();
  }
}
