package ridgeproof.cli.desk;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import picocli.CommandLine.Option;
import ridgeproof.cli.io.CommandFailure;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.gate.GateFolders;
import ridgeproof.gate.GateSettings;
import ridgeproof.spec.agency.AgencyProfile;

/** The three folders of a gate. */
final class GateFolderOptions {

  /** Stations write a file within a second or two, and not in several goes. */
  static final Duration SETTLE = Duration.ofSeconds(3);

  @Option(
      names = "--from",
      paramLabel = "DIR",
      description = "the folder that the station exports to")
  Path from;

  @Option(names = "--ready", paramLabel = "DIR", description = "READY files are moved here")
  Path ready;

  @Option(
      names = "--hold",
      paramLabel = "DIR",
      description = "all others are moved here, each into a folder with its report")
  Path hold;

  /** Not marked as required: a command below that of the gate would ask for them twice. */
  GateFolders folders() {
    if (from == null || ready == null || hold == null) {
      throw CommandFailure.usage("--from, --ready and --hold are needed, each with a folder");
    }
    return new GateFolders(from, ready, hold);
  }

  /** With the reasons of the agency whose profile was named. */
  static GateSettings settings(ExaminationOptions options, long maxFileSize) {
    List<String> reasons = options.agency().map(AgencyProfile::releaseReasons).orElse(List.of());
    return new GateSettings(
        SETTLE, Math.min(maxFileSize, Integer.MAX_VALUE - 8L), reasons, Clock.systemUTC());
  }
}
