package ridgeproof.calibration.fault;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import ridgeproof.corpus.fault.Fault;
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

  @Mixin FaultChoice choice;

  @Override
  public Integer call() throws IOException {
    List<Fault> faults = choice.faults();
    List<XmlComparison> compared = new ArrayList<>();
    compared.addAll(new XmlTrial(Depth.STRUCTURE).run(ofStructure(faults, true)));
    compared.addAll(new XmlTrial(choice.depth()).run(ofStructure(faults, false)));
    Files.writeString(report, new XmlFaultDocument(faults, compared).write(command()));
    return 0;
  }

  private static List<Fault> ofStructure(List<Fault> faults, boolean which) {
    return faults.stream().filter(fault -> fault.area().isOfStructure() == which).toList();
  }

  private String command() {
    return "./inspector/calibration/calibrate xml-faults"
        + choice.options()
        + " --report docs/faults-in-xml.md";
  }
}
