package ridgeproof.calibration;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import ridgeproof.calibration.print.MeasureTable;
import ridgeproof.calibration.print.PrintSource;

/** Writes the measures of labelled prints. */
@Command(
    name = "measure",
    mixinStandardHelpOptions = true,
    description = "Draws labeled cards and writes the measures of every print as CSV.")
final class MeasureCommand implements Callable<Integer> {

  @Mixin PrintSource source;

  @Option(names = "--output", required = true, description = "the CSV file to write")
  Path output;

  @Override
  public Integer call() throws IOException {
    try (BufferedWriter out = Files.newBufferedWriter(output)) {
      MeasureTable.write(source.prints(), out);
    }
    return 0;
  }
}
