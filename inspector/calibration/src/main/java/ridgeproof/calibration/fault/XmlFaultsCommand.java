package ridgeproof.calibration.fault;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import ridgeproof.corpus.fault.Fault;
import ridgeproof.corpus.fault.FaultCatalogue;
import ridgeproof.examination.facts.Depth;

/** Examines the fault catalogue in both encodings and writes where they differ. */
@Command(
    name = "xml-faults",
    mixinStandardHelpOptions = true,
    description =
        "Examines every file of the fault catalogue in both encodings and writes whether the first"
            + " finding is the same.")
public final class XmlFaultsCommand implements Callable<Integer> {

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
    List<Fault> faults =
        FaultCatalogue.faults().stream()
            .filter(fault -> only == null || only.stream().anyMatch(fault.id()::startsWith))
            .toList();
    XmlTrial trial = new XmlTrial(Depth.valueOf(depth.toUpperCase(Locale.ROOT)));
    Files.writeString(report, new XmlFaultDocument(faults, trial.run(faults)).write(command()));
    return 0;
  }

  private String command() {
    return "./inspector/calibration/calibrate xml-faults"
        + (only == null ? "" : " --only " + String.join(",", only))
        + (depth.equals("ridges") ? "" : " --depth " + depth)
        + " --report docs/faults-in-xml.md";
  }
}
