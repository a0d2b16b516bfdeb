package ridgeproof.calibration.fault;

import java.util.List;
import java.util.Locale;
import picocli.CommandLine.Option;
import ridgeproof.corpus.fault.Fault;
import ridgeproof.corpus.fault.FaultCatalogue;
import ridgeproof.examination.facts.Depth;

/** Which faults of the catalogue a command examines, and how deep. */
final class FaultChoice {

  private static final String USUAL_DEPTH = "ridges";

  @Option(
      names = "--only",
      paramLabel = "ID",
      split = ",",
      description = "faults by the start of their ids, such as T or Q003; all unless given")
  List<String> only;

  @Option(
      names = "--depth",
      defaultValue = USUAL_DEPTH,
      description = "structure, images or ridges (default: ridges)")
  String depth;

  List<Fault> faults() {
    return FaultCatalogue.faults().stream()
        .filter(fault -> only == null || only.stream().anyMatch(fault.id()::startsWith))
        .toList();
  }

  Depth depth() {
    return Depth.valueOf(depth.toUpperCase(Locale.ROOT));
  }

  /** The options again, as a command line has them. */
  String options() {
    return (only == null ? "" : " --only " + String.join(",", only))
        + (depth.equals(USUAL_DEPTH) ? "" : " --depth " + depth);
  }
}
