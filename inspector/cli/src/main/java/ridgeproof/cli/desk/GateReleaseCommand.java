package ridgeproof.cli.desk;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import ridgeproof.cli.io.CommandFailure;
import ridgeproof.cli.io.Console;
import ridgeproof.cli.io.ExitStatus;
import ridgeproof.cli.option.NamedProfile;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.gate.GateFailure;
import ridgeproof.gate.GateSettings;
import ridgeproof.gate.HeldFile;
import ridgeproof.gate.HeldFiles;
import ridgeproof.report.TextSanitizer;
import ridgeproof.spec.SpecTables;

@Command(
    name = "release",
    description = {
      "Lists what a gate holds, or moves one held file on as it is.",
      "",
      "The agency's profile lists the reasons (release_reasons). Reason and name go on "
          + "record; no finding changes. This works while the gate is running."
    },
    footer = {
      "",
      "Examples:",
      "  ridgeproof gate release --from export --ready outbox --hold held --profile agency.toml"
    })
final class GateReleaseCommand implements Callable<Integer> {

  @Parameters(
      paramLabel = "NAME",
      arity = "0..1",
      description = "the held file; without it all held files are listed")
  String entry;

  @Mixin GateFolderOptions folders;

  @Option(
      names = "--profile",
      paramLabel = "FILE",
      required = true,
      description = "the agency's profile, such as docs/examples/tidewater-pilots.toml")
  Path profile;

  @Option(names = "--reason", paramLabel = "TEXT", description = "a reason from the agency's list")
  String reason;

  @Option(names = "--by", paramLabel = "NAME", description = "who releases the file")
  String by;

  private final Console console;

  GateReleaseCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    ExaminationOptions options =
        NamedProfile.applyTo(ExaminationOptions.standard(), profile.toString(), SpecTables.open());
    GateSettings settings = GateFolderOptions.settings(options, Integer.MAX_VALUE);
    try {
      HeldFiles held = HeldFiles.in(folders.folders(), settings);
      if (entry == null) {
        list(held.list());
        return ExitStatus.OK;
      }
      if (reason == null || by == null) {
        throw CommandFailure.usage("--reason and --by are needed; reasons: " + words(settings));
      }
      String as = held.release(entry, reason, by);
      console.print(
          "released " + TextSanitizer.of(entry) + ", moved on as " + TextSanitizer.of(as));
      return ExitStatus.OK;
    } catch (GateFailure failure) {
      throw CommandFailure.usage(
          failure.getMessage()
              + (settings.reasons().contains(reason) ? "" : "; reasons: " + words(settings)));
    }
  }

  private static String words(GateSettings settings) {
    return settings.reasons().stream()
        .map(one -> '"' + one + '"')
        .collect(Collectors.joining(", "));
  }

  private void list(List<HeldFile> held) {
    if (held.isEmpty()) {
      console.print("no files are held");
    }
    held.forEach(file -> console.print(file.verdict() + "  " + TextSanitizer.of(file.entry())));
  }
}
