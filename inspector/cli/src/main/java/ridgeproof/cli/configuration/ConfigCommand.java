package ridgeproof.cli.configuration;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import ridgeproof.cli.io.Console;
import ridgeproof.cli.io.ExitStatus;
import ridgeproof.cli.reporting.ReportFormat;

@Command(
    name = "config",
    description = {
      "Shows the user's configuration file, the settings in it, and the defaults.",
      "",
      "The file is TOML. It may set profile (the name of a set of prints), format (of examine),"
          + " and agency (the file of an agency's own profile). Options of the command line"
          + " override it."
    },
    footer = {
      "",
      "Examples:",
      "  ridgeproof config",
    })
public final class ConfigCommand implements Callable<Integer> {

  private static final String NO_FILE =
      "This file does not exist. To change a default, create it with one or more of these lines:\n"
          + "  profile = \"rolled-card\"\n"
          + "  format = \"html\"\n"
          + "  agency = \"/path/to/profile-of-the-agency.toml\"\n";

  private final Console console;
  private final Path path;

  /**
   * @param path the user's file, which need not exist
   */
  public ConfigCommand(Console console, Path path) {
    this.console = console;
    this.path = path;
  }

  @Override
  public Integer call() {
    boolean present = Files.exists(path);
    Optional<ConfigurationFile> file =
        present ? Optional.of(ConfigurationFile.read(path)) : Optional.empty();
    StringBuilder text = new StringBuilder("Configuration file: " + path + "\n");
    text.append(present ? "" : NO_FILE).append('\n');
    line(text, "Setting", "Value", "From");
    setting(text, file, ConfigurationFile.PROFILE, "inferred from each file");
    setting(text, file, ConfigurationFile.FORMAT, ReportFormat.text.name());
    setting(text, file, ConfigurationFile.AGENCY, "none");
    console.print(text.toString());
    return ExitStatus.OK;
  }

  private static void setting(
      StringBuilder text, Optional<ConfigurationFile> file, String key, String otherwise) {
    Optional<String> set = file.flatMap(settings -> settings.value(key));
    line(text, key, set.orElse(otherwise), set.isPresent() ? "configuration file" : "default");
  }

  private static void line(StringBuilder text, String... columns) {
    List<String> parts = List.of(columns);
    text.append(
        String.format(Locale.ROOT, "%-8s %-28s %s%n", parts.get(0), parts.get(1), parts.get(2))
            .replace(System.lineSeparator(), "\n"));
  }
}
