package ridgeproof.calibration.fault;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import ridgeproof.corpus.fault.FaultCatalogue;
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

  @Mixin FaultChoice choice;

  @Override
  public Integer call() throws IOException {
    FaultTrial trial = new FaultTrial(choice.depth());
    List<FaultResult> results = trial.run(choice.faults());
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

  private List<Path> transactions() throws IOException {
    try (Stream<Path> files = Files.list(reference)) {
      return files.filter(file -> file.toString().endsWith(".an2")).sorted().toList();
    }
  }

  private String command() {
    return "./inspector/calibration/calibrate faults"
        + choice.options()
        + (reference == null ? "" : " --reference ../shared/reference")
        + " --report docs/faults.md";
  }
}
