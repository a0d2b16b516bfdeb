package ridgeproof.cli.configuration;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;

/** Where each system keeps what a user sets. */
public final class ConfigurationPlace {

  private static final String FOLDER = "ridgeproof";
  private static final String FILE = "config.toml";

  private ConfigurationPlace() {}

  /** The file of the user who runs this; it need not exist. */
  public static Path ofThisUser() {
    return of(System.getenv(), System.getProperty("os.name"), System.getProperty("user.home"));
  }

  /**
   * The file of a user.
   *
   * @param environment where XDG_CONFIG_HOME and APPDATA may be set
   * @param system as the JVM names the operating system
   * @param home the user's folder
   */
  static Path of(Map<String, String> environment, String system, String home) {
    String name = system.toLowerCase(Locale.ROOT);
    if (name.startsWith("windows")) {
      String roaming = environment.getOrDefault("APPDATA", "");
      return file(roaming.isEmpty() ? Path.of(home, "AppData", "Roaming") : Path.of(roaming));
    }
    if (name.startsWith("mac")) {
      return file(Path.of(home, "Library", "Application Support"));
    }
    String set = environment.getOrDefault("XDG_CONFIG_HOME", "");
    // The XDG specification asks for paths from the root, and to ignore others.
    boolean usable = !set.isEmpty() && Path.of(set).isAbsolute();
    return file(usable ? Path.of(set) : Path.of(home, ".config"));
  }

  private static Path file(Path settings) {
    return settings.resolve(FOLDER).resolve(FILE);
  }
}
