package ridgeproof.cli;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import picocli.CommandLine.Model.ArgGroupSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/**
 * The options of a command in groups by purpose, those that are used most first. Only help needs
 * it: arranging them for each run would cost time at its start.
 */
final class OptionGroups {

  private static final String HELP = "Help";
  private static final String OTHERS = "Other options";

  private static final Map<String, List<String>> GROUPS = groups();

  private OptionGroups() {}

  private static Map<String, List<String>> groups() {
    Map<String, List<String>> groups = new LinkedHashMap<>();
    groups.put(
        "Output",
        List.of(
            "--format",
            "--output",
            "--output-dir",
            "--to",
            "--per-file",
            "--overwrite",
            "--attach-safe-copy",
            "--paper",
            "--generated-at"));
    groups.put(
        "What to check",
        List.of("--profile", "--depth", "--ignore", "--as-of", "--second-decoder", "--schemas"));
    groups.put("Folders of the gate", List.of("--from", "--ready", "--hold", "--once"));
    groups.put("Release of a held file", List.of("--reason", "--by"));
    groups.put("Page", List.of("--port", "--no-browser", "--watch", "--keep"));
    groups.put("Which images", List.of("--finger", "--crop", "--overlay"));
    groups.put("Which stories", List.of("--story"));
    groups.put("What to list", List.of("--find", "--count", "--coverage"));
    groups.put(
        "What to show",
        List.of("--show-personal", "--with-control-number", "--with-images", "--all-findings"));
    groups.put("Message of the bureau", List.of("--message", "--response"));
    groups.put("Folders", List.of("--fail-on", "--operator-field"));
    groups.put("Ledger", List.of("--ledger", "--ledger-key", "--ledger-control-numbers"));
    groups.put("Ledger entries", List.of("--before", "--until", "--operators"));
    groups.put(OTHERS, List.of());
    groups.put(
        "Limits, rarely needed",
        List.of(
            "--max-file-size",
            "--max-records",
            "--max-items",
            "--max-findings",
            "--max-pixels",
            "--image-time",
            "--file-pixels",
            "--file-time"));
    groups.put(HELP, List.of("--help", "--version"));
    return groups;
  }

  /** Moves the options of a command into groups. */
  static void arrange(CommandSpec command) {
    if (command.argGroups().stream().anyMatch(OptionGroups::isHelp)) {
      return; // arranged before
    }
    command.usageMessage().abbreviateSynopsis(true).sortOptions(false).parameterListHeading("%n");
    Set<OptionSpec> grouped = new HashSet<>();
    command.argGroups().forEach(group -> grouped.addAll(group.allOptionsNested()));
    List<OptionSpec> options =
        command.options().stream().filter(option -> !grouped.contains(option)).toList();
    int order = 0;
    for (Map.Entry<String, List<String>> group : GROUPS.entrySet()) {
      List<OptionSpec> members =
          group.getKey().equals(OTHERS)
              ? options.stream().filter(OptionGroups::isInNoGroup).toList()
              : group.getValue().stream().flatMap(name -> named(name, options)).toList();
      if (!members.isEmpty()) {
        ArgGroupSpec.Builder built =
            ArgGroupSpec.builder()
                .heading(heading(group.getKey()))
                .validate(false)
                .exclusive(false)
                .order(order++);
        List<OptionSpec> moved = new ArrayList<>(members);
        moved.forEach(command::remove);
        moved.forEach(built::addArg);
        command.addArgGroup(built.build());
      }
    }
  }

  private static String heading(String group) {
    return "%n" + group + ":%n";
  }

  private static boolean isHelp(ArgGroupSpec group) {
    return heading(HELP).equals(group.heading());
  }

  private static Stream<OptionSpec> named(String name, List<OptionSpec> options) {
    return options.stream().filter(option -> List.of(option.names()).contains(name));
  }

  private static boolean isInNoGroup(OptionSpec option) {
    return GROUPS.values().stream()
        .flatMap(List::stream)
        .noneMatch(name -> List.of(option.names()).contains(name));
  }
}
