package ridgeproof.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import ridgeproof.cli.io.CommandFailure;
import ridgeproof.cli.io.Console;
import ridgeproof.cli.io.ExitStatus;
import ridgeproof.cli.io.Version;
import ridgeproof.cli.ledger.LedgerCommand;

@Command(
    name = "ridgeproof",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = {
      "Says before sending what a bureau will object to in a fingerprint transaction file.",
      ""
    },
    synopsisSubcommandLabel = "COMMAND",
    commandListHeading = "%nCommands:%n",
    footer = {
      "",
      "ridgeproof COMMAND --help explains a command. A first try:",
      "  ridgeproof examine FILE"
    })
public final class RidgeproofCommand implements Runnable {

  @Spec CommandSpec spec;

  @Override
  public void run() {
    throw new ParameterException(spec.commandLine(), "a command is missing");
  }

  /** The whole command line, writing to that console. */
  public static CommandLine commandLine(Console console) {
    CommandLine line = new CommandLine(new RidgeproofCommand());
    line.addSubcommand(new ExamineCommand(console));
    line.addSubcommand(new TicketCommand(console));
    line.addSubcommand(new CompareCommand(console));
    line.addSubcommand(new LayoutCommand(console));
    line.addSubcommand(new ImagesCommand(console));
    line.addSubcommand(new RulesCommand(console));
    line.addSubcommand(new CodesCommand(console));
    line.addSubcommand(new DemoCommand(console));
    line.addSubcommand(LedgerCommand.withParts(console));
    line.getSubcommands().values().forEach(RidgeproofCommand::addHelp);
    line.getSubcommands()
        .get("ledger")
        .getSubcommands()
        .values()
        .forEach(RidgeproofCommand::addHelp);
    line.setOut(new PrintWriter(console.out(), true, StandardCharsets.UTF_8));
    line.setErr(new PrintWriter(console.error(), true, StandardCharsets.UTF_8));
    line.setColorScheme(
        CommandLine.Help.defaultColorScheme(
            console.colour() ? CommandLine.Help.Ansi.ON : CommandLine.Help.Ansi.OFF));
    line.setExpandAtFiles(false);
    line.setParameterExceptionHandler(
        (failure, arguments) -> {
          String command = failure.getCommandLine().getCommandSpec().qualifiedName();
          console.complain(firstLine(failure.getMessage()));
          console.error().println("try: " + command + " --help");
          console.error().flush();
          return ExitStatus.USAGE;
        });
    line.setExecutionStrategy(RidgeproofCommand::run);
    line.setExecutionExceptionHandler((failure, ended, parsed) -> report(failure, console));
    return line;
  }

  private static void addHelp(CommandLine command) {
    command
        .getCommandSpec()
        .addOption(
            CommandLine.Model.OptionSpec.builder("-h", "--help")
                .usageHelp(true)
                .description("show this help")
                .build());
  }

  /** Too little memory is a condition of the machine, and no defect and no verdict on a file. */
  private static int run(CommandLine.ParseResult parsed) {
    try {
      return new CommandLine.RunLast().execute(parsed);
    } catch (OutOfMemoryError e) {
      CommandFailure failure = CommandFailure.outOfMemory("the command");
      throw new CommandLine.ExecutionException(
          parsed.commandSpec().commandLine(), failure.getMessage(), failure);
    }
  }

  private static int report(Exception failure, Console console) {
    int status = ExitStatus.DEFECT;
    if (failure instanceof CommandFailure known) {
      console.complain(known.getMessage());
      status = known.status();
    } else {
      // Only types and places: a message could hold a value from the file.
      console.error().println("ridgeproof: a defect of ours; please report these lines");
      for (Throwable cause = failure; cause != null; cause = cause.getCause()) {
        console.error().println("  " + cause.getClass().getName());
        for (StackTraceElement element : cause.getStackTrace()) {
          console.error().println("    at " + element);
        }
      }
    }
    console.error().flush();
    return status;
  }

  private static String firstLine(String message) {
    int end = message.indexOf('\n');
    return end < 0 ? message : message.substring(0, end).strip();
  }
}
