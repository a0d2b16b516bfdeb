package ridgeproof.calibration.print;

import java.util.Locale;
import picocli.CommandLine.Option;

/** Which cards are drawn. */
public final class DrawOptions {

  @Option(
      names = "--seed",
      paramLabel = "S",
      required = true,
      description = "of the draw: 1 to 999999 to fit on, 1000000 to 1999999 to evaluate by")
  public long seed;

  @Option(
      names = "--cards",
      paramLabel = "N",
      defaultValue = "60",
      description = "cards and sets of flats, half of each (default: 60)")
  public int cards;

  @Option(
      names = "--defect-rate",
      paramLabel = "R",
      defaultValue = "0.5",
      description = "share of images with a defect, 0 to 1 (default: 0.5)")
  public double defectRate;

  /** The options that give the same prints. */
  public String options() {
    return String.format(
        Locale.ROOT, "--seed %d --cards %d --defect-rate %.2f", seed, cards, defectRate);
  }
}
