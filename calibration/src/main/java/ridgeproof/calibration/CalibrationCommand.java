package ridgeproof.calibration;

import picocli.CommandLine;
import picocli.CommandLine.Command;

/** Measures drawn prints, fits limits on them, and tells how well defects are found. */
@Command(
    name = "ridgeproof-calibration",
    mixinStandardHelpOptions = true,
    subcommands = {MeasureCommand.class, FitCommand.class},
    description = "Fits the limits of ridge measures on synthetic prints and evaluates them.")
public final class CalibrationCommand {

  private static final int USAGE = 64;

  /** Runs the command and ends the process. */
  public static void main(String[] arguments) {
    System.exit(commandLine().execute(arguments));
  }

  static CommandLine commandLine() {
    CommandLine line = new CommandLine(new CalibrationCommand());
    line.setParameterExceptionHandler(
        (failure, arguments) -> {
          failure
              .getCommandLine()
              .getErr()
              .println("ridgeproof-calibration: " + failure.getMessage());
          failure.getCommandLine().getErr().flush();
          return USAGE;
        });
    return line;
  }
}
