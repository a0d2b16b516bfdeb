package ridgeproof.cli;

import picocli.CommandLine;
import ridgeproof.cli.configuration.ConfigurationPlace;
import ridgeproof.cli.configuration.UserDefaults;
import ridgeproof.cli.io.Console;
import ridgeproof.cli.io.ExitStatus;

/** Starts the command line. */
public final class Main {

  private Main() {}

  public static void main(String[] arguments) {
    // Else picocli looks through every library for a language that nobody uses here: 16 ms.
    System.setProperty("picocli.disable.closures", "true");
    // Nor does it need to know how to read types of which no option is.
    System.setProperty("picocli.converters.excludes", "java[.](sql|time)[.].*");
    Console console = Console.system();
    CommandLine line = RidgeproofCommand.commandLine(console, arguments);
    UserDefaults.of(ConfigurationPlace.ofThisUser()).ifPresent(line::setDefaultValueProvider);
    int status = line.execute(arguments);
    console.out().flush();
    console.error().flush();
    System.exit(console.isReaderGone() ? ExitStatus.READER_GONE : status);
  }
}
