package ridgeproof.corpus.batch;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import ridgeproof.corpus.composition.FileEncoding;
import ridgeproof.corpus.fault.Fault;
import ridgeproof.corpus.fault.FaultCatalogue;
import ridgeproof.corpus.fault.FaultComposer;
import ridgeproof.corpus.fault.FaultInXml;
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

  @Option(
      names = "--encoding",
      paramLabel = "ENCODING",
      defaultValue = "traditional",
      description =
          "traditional or xml (default: traditional); faults that XML cannot have are left out")
  FileEncoding encoding;

  @Spec CommandSpec spec;

  @Override
  public Integer call() throws InterruptedException {
    return new OutputFolder(folder, overwrite).fill(this::write, spec.commandLine().getErr());
  }

  private void write() throws IOException {
    boolean xml = encoding == FileEncoding.XML;
    FaultComposer composer = xml ? FaultComposer.inXml() : new FaultComposer();
    Map<String, FaultInXml> others = xml ? FaultCatalogue.inXml() : Map.of();
    for (String base : FaultCatalogue.bases()) {
      Files.write(folder.resolve(base + encoding.extension()), composer.clean(base));
    }
    List<Fault> faults =
        FaultCatalogue.faults().stream()
            .filter(fault -> !others.containsKey(fault.id()) || others.get(fault.id()).exists())
            .toList();
    for (Fault fault : faults) {
      Files.write(folder.resolve(fault.id() + encoding.extension()), composer.compose(fault));
    }
    CSVFormat format =
        CSVFormat.DEFAULT.builder().setHeader(COLUMNS).setRecordSeparator("\n").get();
    try (CSVPrinter labels =
        new CSVPrinter(Files.newBufferedWriter(folder.resolve(Batch.LABELS)), format)) {
      for (Fault fault : faults) {
        labels.printRecord(
            fault.id() + encoding.extension(),
            fault.area(),
            fault.base(),
            fault.fault(),
            String.join(
                " or ",
                others.containsKey(fault.id()) ? others.get(fault.id()).rules() : fault.rules()),
            fault.places().stream().map(FaultPlace::toString).collect(Collectors.joining(" or ")),
            fault.others(),
            fault.open());
      }
    }
  }
}
