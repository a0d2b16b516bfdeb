package ridgeproof.cli.desk;

import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import ridgeproof.cli.io.Console;
import ridgeproof.cli.option.ExaminationMixin;
import ridgeproof.cli.option.LimitOptions;

@Command(
    name = "gate",
    description = {
      "Checks the files a station exports and moves READY files on; all others are " + "held.",
      "",
      "Each file ends in exactly one of the folders, unchanged, whatever is stopped "
          + "when. The three folders must be on the same disk. The station should write a "
          + "file under another name, such as one that ends in .part, and rename it when it "
          + "is complete; a file that is written in place is taken when it has not changed "
          + "for 3 seconds. What happened to each file is recorded in .gate/record.jsonl in "
          + "the --hold folder."
    },
    footer = {
      "",
      "Examples:",
      "  ridgeproof gate --from export --ready outbox --hold held",
      "  ridgeproof gate --once --from export --ready outbox --hold held",
      "",
      "Exit status with --once: 0 all files moved on, 2 a file was held, 74 a problem."
    })
public final class GateCommand implements Callable<Integer> {

  @Mixin GateFolderOptions folders;

  @Option(names = "--once", description = "check what is in the folder, then end")
  boolean once;

  @Mixin ExaminationMixin choices;

  @Mixin LimitOptions limits;

  private final Console console;

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
    return new OpenGate(this, console).untilEnded();
  }
}
