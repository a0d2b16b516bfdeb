package ridgeproof.cli.configuration;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.IDefaultValueProvider;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import ridgeproof.cli.io.CommandFailure;

/** Defaults of options from the user's configuration file, which is read when one is asked for. */
public final class UserDefaults implements IDefaultValueProvider {

  /** The only command whose reports have all the formats that can be set. */
  private static final String FORMATTED = "examine";

  private final Path file;
  private ConfigurationFile read;

  private UserDefaults(Path file) {
    this.file = file;
  }

  /** Of this file; empty where there is none, so that nothing is asked or loaded. */
  public static Optional<UserDefaults> of(Path file) {
    return Files.exists(file) ? Optional.of(new UserDefaults(file)) : Optional.empty();
  }

  @Override
  public String defaultValue(ArgSpec argument) {
    if (!(argument instanceof OptionSpec option)) {
      return null;
    }
    return switch (option.longestName()) {
      case "--profile" ->
          configured(argument, ConfigurationFile.AGENCY)
              .or(() -> configured(argument, ConfigurationFile.PROFILE))
              .orElse(null);
      case "--format" ->
          option.command().name().equals(FORMATTED)
              ? configured(argument, ConfigurationFile.FORMAT).orElse(null)
              : null;
      default -> null;
    };
  }

  private Optional<String> configured(ArgSpec argument, String key) {
    try {
      if (read == null) {
        read = ConfigurationFile.read(file);
      }
      return read.value(key);
    } catch (CommandFailure failure) {
      throw new ParameterException(argument.command().commandLine(), failure.getMessage());
    }
  }
}
