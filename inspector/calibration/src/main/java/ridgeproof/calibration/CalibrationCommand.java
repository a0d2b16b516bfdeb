package ridgeproof.calibration;

import java.io.IOException;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import ridgeproof.calibration.fault.FaultsCommand;
import ridgeproof.calibration.fault.XmlFaultsCommand;
import ridgeproof.calibration.limits.LimitsCommand;

/**
 * Measures drawn prints, fits limits on them, and tells how well defects are found and how natural
 * the prints are.
 */
@Command(
    name = "inspector/calibration/calibrate",
    mixinStandardHelpOptions = true,
    subcommands = {
      MeasureCommand.class,
      FitCommand.class,
      EvaluateCommand.class,
      StatisticsCommand.class,
      CardsCommand.class,
      FaultsCommand.class,
      XmlFaultsCommand.class,
      LimitsCommand.class,
      RealCommand.class,
      LikenessCommand.class
    },
    description = "Fits the limits of ridge measures on synthetic prints and evaluates them.")
public final class CalibrationCommand {

  private static final int USAGE = 64;
  private static final int INPUT_OUTPUT = 74;

  /** Runs the command and ends the process. */
  public static void main(String[] arguments) {
    System.exit(commandLine().execute(arguments));
  }

  public static CommandLine commandLine() {
    CommandLine line = new CommandLine(new CalibrationCommand());
    line.setParameterExceptionHandler(
        (failure, arguments) -> told(failure.getCommandLine(), failure, USAGE));
    line.setExecutionExceptionHandler(
        (failure, commandLine, result) -> {
          if (failure instanceof IllegalArgumentException) {
            return told(commandLine, failure, USAGE);
          }
          if (failure instanceof IOException) {
            return told(commandLine, failure, INPUT_OUTPUT);
          }
          throw failure;
        });
    return line;
  }

  private static int told(CommandLine line, Exception failure, int status) {
    line.getErr().println("inspector/calibration/calibrate: " + failure.getMessage());
    line.getErr().flush();
    return status;
  }
}
