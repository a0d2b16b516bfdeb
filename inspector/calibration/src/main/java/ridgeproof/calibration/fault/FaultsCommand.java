package ridgeproof.calibration.fault;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import ridgeproof.corpus.fault.Fault;
import ridgeproof.corpus.fault.FaultCatalogue;
import ridgeproof.examination.facts.Depth;
import ridgeproof.finding.Finding;

/** Examines the fault catalogue and writes how it fared. */
@Command(
    name = "faults",
    mixinStandardHelpOptions = true,
    description = "Examines every file of the fault catalogue and writes which faults are named.")
public final class FaultsCommand implements Callable<Integer> {

  @Option(
      names = "--reference",
      paramLabel = "DIR",
      description = "public reference transactions, for accusations of files that are sound")
  Path reference;

  @Option(names = "--report", required = true, description = "the Markdown file to write")
  Path report;

  @Option(
      names = "--only",
      paramLabel = "ID",
      split = ",",
      description = "faults by the start of their ids, such as T or Q003; all unless given")
  List<String> only;

  @Option(
      names = "--depth",
      defaultValue = "ridges",
      description = "structure, images or ridges (default: ridges)")
  String depth;

  @Override
  public Integer call() throws IOException {
    FaultTrial trial = new FaultTrial(Depth.valueOf(depth.toUpperCase(Locale.ROOT)));
    List<FaultResult> results = trial.run(faults());
    Map<String, List<Finding>> clean = new TreeMap<>();
    FaultCatalogue.bases().forEach(base -> clean.put(base, trial.accusations(base)));
    Map<String, List<Finding>> sound = new LinkedHashMap<>();
    if (reference != null) {
      for (Path file : transactions()) {
        sound.put(file.getFileName().toString(), trial.accusations(Files.readAllBytes(file)));
      }
    }
    Files.writeString(report, new FaultDocument(results).write(command(), clean, sound));
    return 0;
  }

  private List<Fault> faults() {
    return FaultCatalogue.faults().stream()
        .filter(fault -> only == null || only.stream().anyMatch(fault.id()::startsWith))
        .toList();
  }

  private List<Path> transactions() throws IOException {
    try (Stream<Path> files = Files.list(reference)) {
      return files.filter(file -> file.toString().endsWith(".an2")).sorted().toList();
    }
  }

  private String command() {
    return "./inspector/calibration/calibrate faults"
        + (only == null ? "" : " --only " + String.join(",", only))
        + (depth.equals("ridges") ? "" : " --depth " + depth)
        + (reference == null ? "" : " --reference ../shared/reference")
        + " --report docs/faults.md";
  }
}
