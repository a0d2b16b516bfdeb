package ridgeproof.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import ridgeproof.cli.configuration.ConfigCommand;
import ridgeproof.cli.configuration.ConfigurationPlace;
import ridgeproof.cli.desk.DeskCommand;
import ridgeproof.cli.desk.GateCommand;
import ridgeproof.cli.io.CommandFailure;
import ridgeproof.cli.io.Console;
import ridgeproof.cli.io.ExitStatus;
import ridgeproof.cli.io.Version;
import ridgeproof.cli.ledger.LedgerCommand;

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

  /** In the order of the help. */
  private static final List<String> COMMANDS =
      List.of(
          "examine",
          "ticket",
          "compare",
          "layout",
          "images",
          "explain",
          "convert",
          "rules",
          "codes",
          "demo",
          "config",
          "completion",
          "desk",
          "gate",
          "ledger",
          "archive");

  @Spec CommandSpec spec;

  @Override
  public void run() {
    throw new ParameterException(spec.commandLine(), "no command given");
  }

  private static CommandLine command(String name, Console console) {
    return switch (name) {
      case "examine" -> new CommandLine(new ExamineCommand(console));
      case "ticket" -> new CommandLine(new TicketCommand(console));
      case "compare" -> new CommandLine(new CompareCommand(console));
      case "layout" -> new CommandLine(new LayoutCommand(console));
      case "images" -> new CommandLine(new ImagesCommand(console));
      case "explain" -> new CommandLine(new ExplainCommand(console));
      case "convert" -> new CommandLine(new ConvertCommand(console));
      case "rules" -> new CommandLine(new RulesCommand(console));
      case "codes" -> new CommandLine(new CodesCommand(console));
      case "demo" -> new CommandLine(new DemoCommand(console));
      case "config" -> new CommandLine(new ConfigCommand(console, ConfigurationPlace.ofThisUser()));
      case "completion" -> new CommandLine(new CompletionCommand(console));
      case "desk" -> new CommandLine(new DeskCommand(console));
      case "gate" -> GateCommand.commandLine(console);
      case "ledger" -> LedgerCommand.withParts(console);
      case "archive" -> new CommandLine(new ArchiveCommand());
      default -> throw new IllegalArgumentException("no command " + name);
    };
  }

  /** The whole command line, writing to that console. */
  public static CommandLine commandLine(Console console) {
    return commandLine(console, COMMANDS);
  }

  /**
   * The command line for these arguments. Reading the annotations of a command takes longer than
   * most of what it does, so that only the command that is named is made; all are made where none
   * is, for help, suggestions and completion.
   */
  static CommandLine commandLine(Console console, String... arguments) {
    String named = arguments.length == 0 ? "" : arguments[0];
    boolean alone = COMMANDS.contains(named) && !named.equals("completion");
    return commandLine(console, alone ? List.of(named) : COMMANDS);
  }

  private static CommandLine commandLine(Console console, List<String> names) {
    CommandLine line = new CommandLine(new RidgeproofCommand());
    names.forEach(name -> line.addSubcommand(name, command(name, console)));
    addHelp(line);
    if (names.equals(COMMANDS)) {
      CommandLine help = new CommandLine(new CommandLine.HelpCommand());
      help.getCommandSpec().usageMessage().description("Explains a command.");
      line.addSubcommand(help);
    }
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
    command.getSubcommands().values().forEach(RidgeproofCommand::addHelp);
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
