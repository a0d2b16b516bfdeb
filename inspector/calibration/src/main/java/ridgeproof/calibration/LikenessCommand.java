package ridgeproof.calibration;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import ridgeproof.calibration.print.SeedRange;
import ridgeproof.calibration.real.LikenessReport;
import ridgeproof.calibration.real.PlainDraw;
import ridgeproof.calibration.real.RealSet;

/** Tells how like the measures of synthetic prints are to those of real ones. */
@Command(
    name = "likeness",
    mixinStandardHelpOptions = true,
    description =
        "Draws single plain prints and compares the distribution of every measure with that of"
            + " sound real prints; writes numbers only.")
final class LikenessCommand implements Callable<Integer> {

  @Option(
      names = "--prints",
      required = true,
      paramLabel = "DIR",
      description = "a folder with one folder for each set of single prints at 500 ppi")
  Path prints;

  @Option(
      names = "--seed",
      paramLabel = "S",
      required = true,
      description = "of the draw: 1 to 999999, none of which limits are evaluated by")
  long seed;

  @Option(
      names = "--drawn",
      paramLabel = "N",
      defaultValue = "200",
      description = "prints to draw of either kind, at least 1 (default: 200)")
  int drawn;

  @Option(names = "--report", required = true, description = "the Markdown file to write")
  Path report;

  @Override
  public Integer call() throws IOException {
    SeedRange.TRAINING.checked(seed);
    if (drawn < 1) {
      throw new IllegalArgumentException("--drawn is " + drawn + ", not 1 or more");
    }
    String command =
        String.format(
            Locale.ROOT,
            "./inspector/calibration/calibrate likeness --prints ../shared/prints --seed %d --drawn %d"
                + " --report docs/corpus/likeness.md",
            seed,
            drawn);
    List<RealSet> sets = RealSet.all(prints);
    LikenessReport text =
        new LikenessReport(
            sets, new PlainDraw(seed, false).draw(drawn), new PlainDraw(seed, true).draw(drawn));
    Files.writeString(report, text.write(command));
    return 0;
  }
}
