package ridgeproof.cli;

import ridgeproof.cli.io.Console;
import ridgeproof.cli.io.ExitStatus;

/** Starts the command line. */
public final class Main {

  private Main() {}

  public static void main(String[] arguments) {
    // Else picocli looks through every library for a language that nobody uses here: 16 ms.
    System.setProperty("picocli.disable.closures", "true");
    Console console = Console.system();
    int status = RidgeproofCommand.commandLine(console, arguments).execute(arguments);
    console.out().flush();
    console.error().flush();
    System.exit(console.isReaderGone() ? ExitStatus.READER_GONE : status);
  }
}
