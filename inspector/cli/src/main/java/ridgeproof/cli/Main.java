package ridgeproof.cli;

/** Starts the command line. */
public final class Main {

  private Main() {}

  public static void main(String[] arguments) {
    // A library of the matcher logs through SLF4J, which complains of having nowhere to log to.
    System.setProperty("slf4j.internal.verbosity", "ERROR");
    Console console = Console.system();
    int status = RidgeproofCommand.commandLine(console).execute(arguments);
    console.out().flush();
    console.error().flush();
    System.exit(status);
  }
}
