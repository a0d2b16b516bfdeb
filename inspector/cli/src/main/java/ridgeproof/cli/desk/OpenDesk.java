package ridgeproof.cli.desk;

import java.io.IOException;
import java.time.Clock;
import java.time.Duration;
import java.util.Optional;
import java.util.function.Supplier;
import ridgeproof.cli.drawing.SyntheticPrints;
import ridgeproof.cli.io.CommandFailure;
import ridgeproof.cli.io.Console;
import ridgeproof.cli.io.ExitStatus;
import ridgeproof.cli.io.Version;
import ridgeproof.desk.Desk;
import ridgeproof.desk.web.DeskSettings;
import ridgeproof.examination.Examiner;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.examination.facts.ImageExtraction;
import ridgeproof.examination.safecopy.Deidentifier;
import ridgeproof.gate.FolderWatch;
import ridgeproof.gate.Gate;
import ridgeproof.gate.GateExamination;
import ridgeproof.gate.GateFailure;
import ridgeproof.spec.SpecTables;

/**
 * The desk that a command asks for. Apart from it, so that the other commands load nothing of a web
 * server when the command line is put together.
 */
final class OpenDesk {

  private final DeskCommand command;
  private final Console console;

  OpenDesk(DeskCommand command, Console console) {
    this.command = command;
    this.console = console;
  }

  /** Opens the desk and waits until it is closed; the status to end with. */
  int untilClosed() {
    SpecTables tables = SpecTables.open();
    command.choices.options(
        command.limits, tables); // what is wrong with them is told before anything opens
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
    Supplier<ExaminationOptions> options =
        () -> command.choices.options(command.limits, tables).withPlaten(true);
    Examiner examiner = new Examiner(tables, command.limits.reading());
    return new DeskSettings(
        command.port,
        Duration.ofMinutes(command.keepMinutes),
        command.limits.maxFileSize,
        examiner,
        options,
        new ImageExtraction(tables, command.limits.decoding()),
        tables,
        watch(),
        gate(examiner, options),
        command.ledger.health(),
        () -> new Deidentifier(examiner, options.get(), new SyntheticPrints()),
        Version.facts(),
        Clock.systemUTC());
  }

  private Optional<FolderWatch> watch() {
    return Optional.ofNullable(command.watched)
        .map(
            folder ->
                new FolderWatch(folder, GateFolderOptions.SETTLE, command.limits.maxFileSize));
  }

  private Optional<Gate> gate(Examiner examiner, Supplier<ExaminationOptions> options) {
    return Optional.ofNullable(command.gateFolders)
        .map(
            given ->
                Gate.open(
                    given.folders(),
                    new GateExamination(examiner, options),
                    GateFolderOptions.settings(options.get(), command.limits.maxFileSize)));
  }

  private void show(String address) {
    console.print("The desk is open at this address, which works once:");
    console.print("  " + address);
    console.print("Ctrl-C closes it.");
    console.out().flush();
    if (!command.noBrowser) {
      try (PrivateAddress file = PrivateAddress.write(address)) {
        file.openInBrowser();
      } catch (IOException e) {
        console.complain("no browser could be opened; open the address yourself");
      }
    }
  }
}
