package ridgeproof.calibration;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine.Option;

/** Where prints come from: drawn anew, or from what {@code measure} wrote. */
final class PrintSource {

  @Option(
      names = "--seed",
      paramLabel = "S",
      required = true,
      description = "of the draw: 1 to 999999 to fit on, 1000000 to 1999999 to evaluate by")
  long seed;

  @Option(
      names = "--cards",
      paramLabel = "N",
      defaultValue = "60",
      description = "cards and sets of flats, half of each, 60 unless set")
  int cards;

  @Option(
      names = "--defect-rate",
      paramLabel = "R",
      defaultValue = "0.5",
      description = "share of images with a defect, 0 to 1, 0.5 unless set")
  double defectRate;

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
  List<MeasuredPrint> prints(Split split) throws IOException {
    split.checked(seed);
    return prints();
  }

  List<MeasuredPrint> prints() throws IOException {
    if (measures == null) {
      return new CardDraw(seed, defectRate).measure(cards);
    }
    try (Reader reader = Files.newBufferedReader(measures)) {
      List<MeasuredPrint> prints = MeasureTable.read(reader);
      if (prints.stream().anyMatch(print -> print.seed() != seed)) {
        throw new IllegalArgumentException(measures + " is not of seed " + seed);
      }
      return prints;
    }
  }

  /** The options that give the same prints. */
  String options() {
    return String.format(
        Locale.ROOT, "--seed %d --cards %d --defect-rate %.2f", seed, cards, defectRate);
  }
}
