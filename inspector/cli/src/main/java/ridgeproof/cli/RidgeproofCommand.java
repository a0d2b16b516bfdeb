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

@Command(
    name = "ridgeproof",
    versionProvider = Version.class,
    description =
        "Checks a transaction file and reports what the receiving bureau is likely to reject.",
    synopsisSubcommandLabel = "COMMAND",
    commandListHeading = "%nCommands:%n",
    footer = {
      "",
      "Examples:",
      "  ridgeproof examine card.an2               what to do before sending this file",
      "  ridgeproof examine --output-dir reports --format html outbox",
      "                                            a page for each file of a folder",
      "  ridgeproof help examine                   explain a command"
    })
public final class RidgeproofCommand implements Runnable {

  @Spec CommandSpec spec;

  @Override
  public void run() {
    throw new ParameterException(spec.commandLine(), "no command given");
  }

  /** The whole command line, writing to that console. */
  public static CommandLine commandLine(Console console) {
    CommandLine line = new CommandLine(new RidgeproofCommand());
    line.addSubcommand(new ExamineCommand(console));
    line.addSubcommand(new TicketCommand(console));
    line.addSubcommand(new CompareCommand(console));
    line.addSubcommand(new LayoutCommand(console));
    line.addSubcommand(new ImagesCommand(console));
    line.addSubcommand(new ExplainCommand(console));
    line.addSubcommand(new RulesCommand(console));
    line.addSubcommand(new CodesCommand(console));
    line.addSubcommand(new DemoCommand(console));
    line.addSubcommand(new CompletionCommand(console));
    line.getSubcommands().values().forEach(RidgeproofCommand::addHelp);
    CommandLine help = new CommandLine(new CommandLine.HelpCommand());
    help.getCommandSpec().usageMessage().description("Explains a command.");
    line.addSubcommand(help);
    addHelp(line);
    line.getCommandSpec()
        .addOption(
            CommandLine.Model.OptionSpec.builder("-V", "--version")
                .versionHelp(true)
                .description("show the version")
                .build());
    arrangeHelp(line);
    line.setOut(new PrintWriter(console.out(), true, StandardCharsets.UTF_8));
    line.setErr(new PrintWriter(console.error(), true, StandardCharsets.UTF_8));
    line.setColorScheme(
        CommandLine.Help.defaultColorScheme(
            console.colour() ? CommandLine.Help.Ansi.ON : CommandLine.Help.Ansi.OFF));
    line.setExpandAtFiles(false);
    line.setParameterExceptionHandler(
        (failure, arguments) -> {
          String command = failure.getCommandLine().getCommandSpec().qualifiedName();
          console.complain(UsageProblem.of(failure));
          console.error().println("try: " + command + " --help");
          console.error().flush();
          return ExitStatus.USAGE;
        });
    line.setExecutionStrategy(RidgeproofCommand::run);
    line.setExecutionExceptionHandler((failure, ended, parsed) -> report(failure, console));
    return line;
  }

  /** Options stand in groups in each help; arranged only where help is asked for. */
  private static void arrangeHelp(CommandLine line) {
    line.setHelpFactory(
        (spec, colors) -> {
          OptionGroups.arrange(spec);
          return new CommandLine.Help(spec, colors);
        });
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
      if (!known.isSilent()) {
        console.complain(known.getMessage());
      }
      status = known.status();
    } else {
      // Only types and places: a message could hold a value from the file.
      console.error().println("ridgeproof: internal error; please report these lines:");
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
}
