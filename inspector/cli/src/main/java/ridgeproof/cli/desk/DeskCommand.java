package ridgeproof.cli.desk;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import ridgeproof.cli.drawing.SyntheticPrints;
import ridgeproof.cli.io.CommandFailure;
import ridgeproof.cli.io.Console;
import ridgeproof.cli.io.ExitStatus;
import ridgeproof.cli.io.Version;
import ridgeproof.cli.option.DepthAndProfile;
import ridgeproof.cli.option.LimitOptions;
import ridgeproof.cli.option.PositiveConverter;
import ridgeproof.desk.Desk;
import ridgeproof.desk.web.DeskSettings;
import ridgeproof.examination.Examiner;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.examination.facts.ImageExtraction;
import ridgeproof.examination.safecopy.SafeCopies;
import ridgeproof.gate.FolderWatch;
import ridgeproof.gate.Gate;
import ridgeproof.gate.GateExamination;
import ridgeproof.gate.GateFailure;
import ridgeproof.spec.SpecTables;

@Command(
    name = "desk",
    description = {
      "Opens a page in the browser of this machine: drop files, see what to do.",
      "",
      "Files stay in the memory of this machine. Nothing is sent anywhere, and nothing is written",
      "to disk unless you save it."
    },
    footer = {"", "Exit status: 0 when the desk is closed."})
public final class DeskCommand implements Callable<Integer> {

  @Option(
      names = "--port",
      paramLabel = "N",
      defaultValue = "0",
      description = "port on the loopback address (default: any free port)")
  int port;

  @Option(
      names = "--keep",
      paramLabel = "MINUTES",
      defaultValue = "60",
      converter = PositiveConverter.class,
      description = "drop a file this long after anyone last opened it (default: 60 minutes)")
  int keepMinutes;

  @Option(
      names = "--watch",
      paramLabel = "DIR",
      description = "also show the files that appear in this folder; nothing is moved")
  Path watched;

  @ArgGroup(exclusive = false, heading = "%nWith a gate (see ridgeproof gate --help):%n")
  GateFolderOptions gateFolders;

  @Option(names = "--no-browser", description = "only print the address")
  boolean noBrowser;

  @Mixin DepthAndProfile choices;

  @Mixin LimitOptions limits;

  private final Console console;

  public DeskCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    SpecTables tables = SpecTables.open();
    choices.options(limits, tables); // what is wrong with them is told before anything opens
    try (Desk desk = open(settings(tables))) {
      Thread whenEnded = new Thread(desk::close);
      Runtime.getRuntime().addShutdownHook(whenEnded);
      show(desk.address());
      desk.awaitStop();
      Runtime.getRuntime().removeShutdownHook(whenEnded);
      return ExitStatus.OK;
    } catch (GateFailure failure) {
      throw CommandFailure.usage(failure.getMessage());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return ExitStatus.OK;
    }
  }

  private static Desk open(DeskSettings settings) {
    try {
      return Desk.open(settings);
    } catch (IOException e) {
      throw CommandFailure.inputOutput("cannot open the desk: " + e.getMessage());
    }
  }

  private DeskSettings settings(SpecTables tables) {
    // Asked for each file: the day changes while the desk is open, and a profile may be corrected.
    Supplier<ExaminationOptions> options = () -> choices.options(limits, tables).withPlaten(true);
    Examiner examiner = new Examiner(tables, limits.reading());
    return new DeskSettings(
        port,
        Duration.ofMinutes(keepMinutes),
        limits.maxFileSize,
        examiner,
        options,
        new ImageExtraction(tables, limits.decoding()),
        tables,
        watch(),
        gate(examiner, options),
        () -> new SafeCopies(examiner, options.get(), new SyntheticPrints()),
        Version.facts(),
        Clock.systemUTC());
  }

  private Optional<FolderWatch> watch() {
    return Optional.ofNullable(watched)
        .map(folder -> new FolderWatch(folder, GateFolderOptions.SETTLE, limits.maxFileSize));
  }

  private Optional<Gate> gate(Examiner examiner, Supplier<ExaminationOptions> options) {
    return Optional.ofNullable(gateFolders)
        .map(
            given ->
                Gate.open(
                    given.folders(),
                    new GateExamination(examiner, options),
                    GateFolderOptions.settings(options.get(), limits.maxFileSize)));
  }

  private void show(String address) {
    console.print("The desk is open at this address, which works once:");
    console.print("  " + address);
    console.print("Ctrl-C closes it.");
    console.out().flush();
    if (!noBrowser) {
      try (PrivateAddress file = PrivateAddress.write(address)) {
        file.openInBrowser();
      } catch (IOException e) {
        console.complain("no browser could be opened; open the address yourself");
      }
    }
  }
}
