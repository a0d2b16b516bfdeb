package ridgeproof.cli.desk;

import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import ridgeproof.cli.io.CommandFailure;
import ridgeproof.cli.io.Console;
import ridgeproof.cli.io.ExitStatus;
import ridgeproof.examination.Examiner;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.gate.Gate;
import ridgeproof.gate.GateExamination;
import ridgeproof.gate.GateFailure;
import ridgeproof.gate.GatePassage;
import ridgeproof.gate.GatePassage.Outcome;
import ridgeproof.report.TextSanitizer;
import ridgeproof.spec.SpecTables;

/** The gate that a command asks for, apart from it for the same reason as {@link OpenDesk}. */
final class OpenGate {

  private static final int HELD = 2;

  private final GateCommand command;
  private final Console console;
  private String lastProblem = "";

  OpenGate(GateCommand command, Console console) {
    this.command = command;
    this.console = console;
  }

  /** Looks at the folders once or until the process is ended; the status to end with. */
  int untilEnded() {
    SpecTables tables = SpecTables.open();
    Supplier<ExaminationOptions> options = () -> command.choices.options(command.limits, tables);
    GateExamination examination =
        new GateExamination(new Examiner(tables, command.limits.reading()), options);
    try (Gate gate =
        Gate.open(
            command.folders.folders(),
            examination,
            GateFolderOptions.settings(options.get(), command.limits.maxFileSize))) {
      return command.once ? settledOnce(gate) : forGood(gate);
    } catch (GateFailure failure) {
      throw CommandFailure.usage(failure.getMessage());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return ExitStatus.OK;
    }
  }

  /** The first look learns how large the files are; later ones find those that stayed so. */
  private int settledOnce(Gate gate) throws InterruptedException {
    int worst = status(gate.pass());
    TimeUnit.MILLISECONDS.sleep(GateFolderOptions.SETTLE.toMillis() + 100);
    return Math.max(worst, status(gate.pass()));
  }

  private int forGood(Gate gate) throws InterruptedException {
    while (true) {
      status(gate.pass());
      TimeUnit.SECONDS.sleep(1);
    }
  }

  private int status(List<GatePassage> passages) {
    int worst = ExitStatus.OK;
    for (GatePassage passage : passages) {
      if (passage.outcome() == Outcome.PROBLEM) {
        problem(passage);
        worst = ExitStatus.INPUT_OUTPUT;
      } else {
        lastProblem = "";
        console.print(line(passage));
        worst = Math.max(worst, passage.outcome() == Outcome.HOLD ? HELD : ExitStatus.OK);
      }
    }
    console.out().flush();
    return worst;
  }

  /** The same problem is met every second, and told once. */
  private void problem(GatePassage passage) {
    String words = passage.name() + ": " + passage.step() + "; trying again";
    if (!words.equals(lastProblem)) {
      lastProblem = words;
      console.complain(words);
    }
  }

  private static String line(GatePassage passage) {
    String name = TextSanitizer.of(passage.name());
    String as = passage.as().equals(passage.name()) ? "" : " as " + TextSanitizer.of(passage.as());
    String first =
        String.format(
            Locale.ROOT,
            "%-10s  %s  %s%s",
            passage.verdict(),
            name,
            passage.outcome() == Outcome.READY ? "moved on" : "held",
            as);
    return passage.step().isEmpty() || passage.outcome() == Outcome.READY
        ? first
        : first + "\n            " + TextSanitizer.of(passage.step());
  }
}
