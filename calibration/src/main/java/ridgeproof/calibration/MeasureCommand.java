package ridgeproof.calibration;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Writes the measures of labelled prints. */
@Command(
    name = "measure",
    mixinStandardHelpOptions = true,
    description = "Draws labelled cards and writes the measures of every print as CSV.")
final class MeasureCommand implements Callable<Integer> {

  @Option(names = "--seed", defaultValue = "1", description = "of the draw, 1 unless set")
  long seed;

  @Option(names = "--cards", defaultValue = "60", description = "how many, 60 unless set")
  int cards;

  @Option(
      names = "--defect-rate",
      defaultValue = "0.5",
      description = "share of images with a defect, 0 to 1, 0.5 unless set")
  double defectRate;

  @Option(names = "--output", required = true, description = "the CSV file to write")
  Path output;

  @Override
  public Integer call() throws IOException {
    try (BufferedWriter out = Files.newBufferedWriter(output)) {
      MeasureTable.write(new CardDraw(seed, defectRate).measure(cards), out);
    }
    return 0;
  }
}
