package ridgeproof.calibration.print;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Where prints come from: drawn anew, or from what {@code measure} wrote. */
public final class PrintSource {

  @Mixin DrawOptions draw;

  @Option(
      names = "--measures",
      paramLabel = "FILE",
      description = "measures of this very draw that were written before, instead of drawing")
  Path measures;

  /**
   * The prints.
   *
   * @throws IllegalArgumentException when a seed belongs to the other split
   */
  public List<MeasuredPrint> prints(SeedRange split) throws IOException {
    split.checked(draw.seed);
    return prints();
  }

  public List<MeasuredPrint> prints() throws IOException {
    if (measures == null) {
      return new LabelledPrints(draw).measure(draw.cards);
    }
    try (Reader reader = Files.newBufferedReader(measures)) {
      List<MeasuredPrint> prints = MeasureTable.read(reader);
      if (prints.stream().anyMatch(print -> print.seed() != draw.seed)) {
        throw new IllegalArgumentException(measures + " is not of seed " + draw.seed);
      }
      return prints;
    }
  }
}
