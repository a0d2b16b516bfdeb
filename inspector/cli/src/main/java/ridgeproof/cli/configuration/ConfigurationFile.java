package ridgeproof.cli.configuration;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.toml.TomlMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.UnmatchedArgumentException;
import ridgeproof.cli.io.CommandFailure;
import ridgeproof.cli.io.IoErrorMessages;
import ridgeproof.cli.reporting.ReportFormat;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.SubmissionProfile;

/**
 * What a user's configuration file sets.
 *
 * @param path the file
 * @param profile name of a set of prints that comes with Ridgeproof
 * @param format the form of a report
 * @param agency an agency's own profile; a name in the file is relative to the file's folder
 */
record ConfigurationFile(
    Path path, Optional<String> profile, Optional<ReportFormat> format, Optional<Path> agency) {

  static final String PROFILE = "profile";
  static final String FORMAT = "format";
  static final String AGENCY = "agency";

  private static final List<String> KEYS = List.of(PROFILE, FORMAT, AGENCY);

  /**
   * Reads a file that exists.
   *
   * @throws CommandFailure a usage error, where it sets anything that cannot be used
   */
  static ConfigurationFile read(Path path) {
    JsonNode document = document(path);
    document.fieldNames().forEachRemaining(key -> refuseUnknown(path, key));
    Optional<String> profile = text(path, document, PROFILE);
    Optional<String> agency = text(path, document, AGENCY);
    if (profile.isPresent() && agency.isPresent()) {
      throw failure(
          path,
          "profile and agency cannot be combined; an agency's profile names its prints with base");
    }
    profile.ifPresent(name -> refuseUnknownProfile(path, name));
    return new ConfigurationFile(
        path,
        profile,
        text(path, document, FORMAT).map(name -> format(path, name)),
        agency.map(name -> path.resolveSibling(name)));
  }

  /** The value of a setting as an option takes it. */
  Optional<String> value(String key) {
    return switch (key) {
      case PROFILE -> profile;
      case FORMAT -> format.map(Enum::name);
      case AGENCY -> agency.map(Path::toString);
      default -> Optional.empty();
    };
  }

  private static JsonNode document(Path path) {
    try {
      return new TomlMapper().readTree(Files.readString(path, StandardCharsets.UTF_8));
    } catch (JsonProcessingException e) {
      String reason = e.getOriginalMessage().lines().findFirst().orElse("no reason given");
      String place = e.getLocation() == null ? "" : ", line " + e.getLocation().getLineNr();
      throw failure(path, "not valid TOML" + place + ": " + reason);
    } catch (IOException e) {
      throw CommandFailure.usage(IoErrorMessages.of(path, e));
    }
  }

  private static void refuseUnknown(Path path, String key) {
    if (!KEYS.contains(key)) {
      CommandLine known = new CommandLine(CommandSpec.create());
      KEYS.forEach(name -> known.addSubcommand(name, CommandSpec.create()));
      String suggestion =
          new UnmatchedArgumentException(known, List.of(key))
              .getSuggestions().stream()
                  .findFirst()
                  .map(nearest -> "did you mean " + nearest + "?")
                  .orElse("available: " + String.join(", ", KEYS));
      throw failure(path, "unknown key '" + key + "'; " + suggestion);
    }
  }

  private static Optional<String> text(Path path, JsonNode document, String key) {
    JsonNode value = document.get(key);
    if (value != null && (!value.isTextual() || value.textValue().isBlank())) {
      throw failure(path, key + " must be a text in quotes");
    }
    return Optional.ofNullable(value).map(JsonNode::textValue);
  }

  private static void refuseUnknownProfile(Path path, String name) {
    List<String> known =
        SpecTables.open().profiles().stream().map(SubmissionProfile::name).toList();
    if (!known.contains(name)) {
      throw failure(
          path,
          "no profile '"
              + name
              + "'; available: "
              + String.join(", ", known)
              + "; an agency's own file is set with agency");
    }
  }

  private static ReportFormat format(Path path, String name) {
    Map<String, ReportFormat> known =
        Arrays.stream(ReportFormat.values()).collect(Collectors.toMap(Enum::name, f -> f));
    if (!known.containsKey(name)) {
      throw failure(
          path,
          "no format '"
              + name
              + "'; available: "
              + Arrays.stream(ReportFormat.values())
                  .map(Enum::name)
                  .collect(Collectors.joining(", ")));
    }
    return known.get(name);
  }

  private static CommandFailure failure(Path path, String message) {
    return CommandFailure.usage(path + ": " + message);
  }
}
