package ridgeproof.cli;

import ridgeproof.cli.io.Console;
import ridgeproof.cli.io.ExitStatus;

/** Starts the command line. */
public final class Main {

  private Main() {}

  public static void main(String[] arguments) {
    Console console = Console.system();
    int status = RidgeproofCommand.commandLine(console, arguments).execute(arguments);
    console.out().flush();
    console.error().flush();
    System.exit(console.isReaderGone() ? ExitStatus.READER_GONE : status);
  }
}
