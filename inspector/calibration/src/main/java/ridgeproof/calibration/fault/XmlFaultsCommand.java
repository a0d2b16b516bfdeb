package ridgeproof.calibration.fault;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import ridgeproof.corpus.fault.Fault;
import ridgeproof.corpus.fault.FaultArea;
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

  private static final Set<FaultArea> OF_STRUCTURE =
      EnumSet.of(FaultArea.TRANSPORT, FaultArea.HEADER, FaultArea.PARTICULARS, FaultArea.SET);

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
      description =
          "structure, images or ridges, for faults that the structure does not show (default:"
              + " ridges)")
  String depth;

  @Override
  public Integer call() throws IOException {
    List<Fault> faults =
        FaultCatalogue.faults().stream()
            .filter(fault -> only == null || only.stream().anyMatch(fault.id()::startsWith))
            .toList();
    List<XmlComparison> compared = new ArrayList<>();
    compared.addAll(new XmlTrial(Depth.STRUCTURE).run(ofStructure(faults, true)));
    Depth deep = Depth.valueOf(depth.toUpperCase(Locale.ROOT));
    compared.addAll(new XmlTrial(deep).run(ofStructure(faults, false)));
    Files.writeString(report, new XmlFaultDocument(faults, compared).write(command()));
    return 0;
  }

  private static List<Fault> ofStructure(List<Fault> faults, boolean which) {
    return faults.stream().filter(fault -> OF_STRUCTURE.contains(fault.area()) == which).toList();
  }

  private String command() {
    return "./inspector/calibration/calibrate xml-faults"
        + (only == null ? "" : " --only " + String.join(",", only))
        + (depth.equals("ridges") ? "" : " --depth " + depth)
        + " --report docs/faults-in-xml.md";
  }
}
