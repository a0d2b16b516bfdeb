package ridgeproof.cli;

import java.util.concurrent.Callable;
import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import ridgeproof.cli.io.Console;
import ridgeproof.cli.io.ExitStatus;

@Command(
    name = "completion",
    description =
        "Prints a script that completes commands, options, and file names in bash and zsh.",
    footer = {
      "",
      "Examples:",
      "  source <(ridgeproof completion)      in this shell",
      "  ridgeproof completion > FILE         to keep it, and source FILE in ~/.bashrc"
    })
final class CompletionCommand implements Callable<Integer> {

  @Spec CommandSpec spec;

  private final Console console;

  CompletionCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    console.print(AutoComplete.bash(spec.root().name(), spec.root().commandLine()));
    return ExitStatus.OK;
  }
}
