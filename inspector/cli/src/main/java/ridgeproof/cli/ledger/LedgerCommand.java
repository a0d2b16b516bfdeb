package ridgeproof.cli.ledger;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import ridgeproof.cli.io.Console;

/** What is done with a ledger besides recording. */
@Command(
    name = "ledger",
    description =
        "Reports on the examinations that were recorded with --ledger, and on the "
            + "responses to them.",
    synopsisSubcommandLabel = "COMMAND",
    commandListHeading = "%nCommands:%n",
    footer = {
      "",
      "Examples:",
      "  ridgeproof examine --ledger office.ledger outbox",
      "  ridgeproof ledger report office.ledger",
      "",
      "ridgeproof ledger COMMAND --help explains a command."
    })
public final class LedgerCommand implements Runnable {

  @Spec CommandSpec spec;

  /** The command with those below it. */
  public static CommandLine withParts(Console console) {
    CommandLine line = new CommandLine(new LedgerCommand());
    line.addSubcommand(new LedgerReportCommand(console));
    line.addSubcommand(new LedgerResponseCommand(console));
    line.addSubcommand(new LedgerCheckCommand(console));
    line.addSubcommand(new LedgerExportCommand(console));
    line.addSubcommand(new LedgerForgetCommand(console));
    return line;
  }

  @Override
  public void run() {
    throw new ParameterException(spec.commandLine(), "a command is missing");
  }
}
