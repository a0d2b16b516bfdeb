package ridgeproof.corpus.batch;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import ridgeproof.corpus.fault.Fault;
import ridgeproof.corpus.fault.FaultCatalogue;
import ridgeproof.corpus.fault.FaultComposer;
import ridgeproof.corpus.fault.FaultPlace;

/** Writes the files of the fault catalogue. */
@Command(
    name = "faults",
    mixinStandardHelpOptions = true,
    description = {
      "Writes the fault catalogue: clean files, one file for each fault, and labels.csv with what is"
          + " wrong in each and the rules of which one should be reported first.",
      ""
    })
final class FaultFilesCommand implements Callable<Integer> {

  private static final String[] COLUMNS = {
    "file", "area", "base", "fault", "rules", "place", "others", "open"
  };

  @Option(
      names = "--output",
      paramLabel = "DIR",
      required = true,
      description = "the folder to write to; it is created if needed")
  Path folder;

  @Option(names = "--overwrite", description = "write into a folder that holds something already")
  boolean overwrite;

  @Spec CommandSpec spec;

  @Override
  public Integer call() throws InterruptedException {
    return new OutputFolder(folder, overwrite).fill(this::write, spec.commandLine().getErr());
  }

  private void write() throws IOException {
    FaultComposer composer = new FaultComposer();
    for (String base : FaultCatalogue.bases()) {
      Files.write(folder.resolve(base + ".an2"), composer.clean(base));
    }
    List<Fault> faults = FaultCatalogue.faults();
    for (Fault fault : faults) {
      Files.write(folder.resolve(fault.id() + ".an2"), composer.compose(fault));
    }
    CSVFormat format =
        CSVFormat.DEFAULT.builder().setHeader(COLUMNS).setRecordSeparator("\n").get();
    try (CSVPrinter labels =
        new CSVPrinter(Files.newBufferedWriter(folder.resolve(Batch.LABELS)), format)) {
      for (Fault fault : faults) {
        labels.printRecord(
            fault.id() + ".an2",
            fault.area(),
            fault.base(),
            fault.fault(),
            String.join(" or ", fault.rules()),
            fault.places().stream().map(FaultPlace::toString).collect(Collectors.joining(" or ")),
            fault.others(),
            fault.open());
      }
    }
  }
}
