package ridgeproof.archive;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;
import ridgeproof.cli.io.CommandFailure;
import ridgeproof.cli.io.Console;
import ridgeproof.cli.io.ExitStatus;

/** Starts the examination of archives: by the launcher, or by {@code spark-submit}. */
public final class ArchiveProgram {

  private ArchiveProgram() {}

  public static void main(String[] arguments) {
    Console console = Console.system();
    int status = commandLine(console).execute(arguments);
    ArchiveSession.close();
    console.out().flush();
    console.error().flush();
    System.exit(status);
  }

  static CommandLine commandLine(Console console) {
    CommandLine line = new CommandLine(new ArchiveExamineCommand(console));
    line.addSubcommand("report", new CommandLine(new ArchiveReportCommand(console)));
    line.addSubcommand("check", new CommandLine(new ArchiveCheckCommand(console)));
    line.setOut(new PrintWriter(console.out(), true, StandardCharsets.UTF_8));
    line.setErr(new PrintWriter(console.error(), true, StandardCharsets.UTF_8));
    line.setExpandAtFiles(false);
    line.setParameterExceptionHandler(
        (failure, arguments) -> {
          console.complain(failure.getMessage());
          console.complain("try: ridgeproof archive --help");
          return ExitStatus.USAGE;
        });
    line.setExecutionExceptionHandler(
        (failure, command, parsed) -> {
          if (failure instanceof CommandFailure told) {
            console.complain(told.getMessage());
            return told.status();
          }
          throw failure;
        });
    return line;
  }
}
