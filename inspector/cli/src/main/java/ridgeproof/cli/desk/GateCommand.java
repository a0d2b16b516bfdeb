package ridgeproof.cli.desk;

import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import ridgeproof.cli.io.CommandFailure;
import ridgeproof.cli.io.Console;
import ridgeproof.cli.io.ExitStatus;
import ridgeproof.cli.option.DepthAndProfile;
import ridgeproof.cli.option.LimitOptions;
import ridgeproof.examination.Examiner;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.gate.Gate;
import ridgeproof.gate.GateExamination;
import ridgeproof.gate.GateFailure;
import ridgeproof.gate.Passage;
import ridgeproof.gate.Passage.Outcome;
import ridgeproof.report.SafeText;
import ridgeproof.spec.SpecTables;

@Command(
    name = "gate",
    description = {
      "Checks the files a station exports and moves READY files on; all others are held.",
      "",
      "Each file ends in exactly one of the folders, unchanged, whatever is stopped when. The three",
      "folders must be on the same disk. The station should write a file under another name, such as",
      "one that ends in .part, and rename it when it is complete; a file that is written in place is",
      "taken when it has not changed for 3 seconds. What happened to each file is recorded in",
      ".gate/record.jsonl in the --hold folder."
    },
    footer = {
      "",
      "Exit status with --once: 0 all files moved on, 2 a file was held, 74 a problem."
    })
public final class GateCommand implements Callable<Integer> {

  private static final int HELD = 2;

  @Mixin GateFolderOptions folders;

  @Option(names = "--once", description = "check what is in the folder, then end")
  boolean once;

  @Mixin DepthAndProfile choices;

  @Mixin LimitOptions limits;

  private final Console console;
  private String lastProblem = "";

  private GateCommand(Console console) {
    this.console = console;
  }

  /** The command with its own command. */
  public static CommandLine commandLine(Console console) {
    CommandLine line = new CommandLine(new GateCommand(console));
    line.addSubcommand(new GateReleaseCommand(console));
    return line;
  }

  @Override
  public Integer call() {
    SpecTables tables = SpecTables.open();
    Supplier<ExaminationOptions> options = () -> choices.options(limits, tables);
    GateExamination examination =
        new GateExamination(new Examiner(tables, limits.reading()), options);
    try (Gate gate =
        Gate.open(
            folders.folders(),
            examination,
            GateFolderOptions.settings(options.get(), limits.maxFileSize))) {
      return once ? settledOnce(gate) : untilEnded(gate);
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

  private int untilEnded(Gate gate) throws InterruptedException {
    while (true) {
      status(gate.pass());
      TimeUnit.SECONDS.sleep(1);
    }
  }

  private int status(List<Passage> passages) {
    int worst = ExitStatus.OK;
    for (Passage passage : passages) {
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
  private void problem(Passage passage) {
    String words = passage.name() + ": " + passage.step() + "; trying again";
    if (!words.equals(lastProblem)) {
      lastProblem = words;
      console.complain(words);
    }
  }

  private static String line(Passage passage) {
    String name = SafeText.of(passage.name());
    String as = passage.as().equals(passage.name()) ? "" : " as " + SafeText.of(passage.as());
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
        : first + "\n            " + SafeText.of(passage.step());
  }
}
