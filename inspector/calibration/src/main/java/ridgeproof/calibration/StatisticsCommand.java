package ridgeproof.calibration;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import ridgeproof.calibration.print.ManualAssessments;
import ridgeproof.calibration.print.SeedRange;
import ridgeproof.calibration.statistics.CardStatistics;
import ridgeproof.calibration.statistics.ObservedCard;
import ridgeproof.calibration.statistics.StatisticsReport;
import ridgeproof.spec.SpecTables;

/** Tells how natural the prints of the corpus are. */
@Command(
    name = "statistics",
    mixinStandardHelpOptions = true,
    description =
        "Draws clean rolled cards and writes how their patterns, ridges, minutiae and matching"
            + " scores compare with published figures and with a real card.")
final class StatisticsCommand implements Callable<Integer> {

  @Option(
      names = "--seed",
      paramLabel = "S",
      required = true,
      description = "of the draw: 1 to 999999, none of which limits are evaluated by")
  long seed;

  @Option(
      names = "--cards",
      paramLabel = "N",
      defaultValue = "100",
      description = "rolled cards, at least 1 (default: 100)")
  int cards;

  @Option(
      names = "--reference",
      paramLabel = "DIR",
      description = "public reference transactions, for the real card")
  Path reference;

  @Option(names = "--report", required = true, description = "the Markdown file to write")
  Path report;

  @Override
  public Integer call() throws IOException {
    SeedRange.TRAINING.checked(seed);
    if (cards < 1) {
      throw new IllegalArgumentException("--cards is " + cards + ", not 1 or more");
    }
    CardStatistics real =
        reference == null
            ? new CardStatistics(List.of(), List.of())
            : CardStatistics.of(ObservedCard.real(reference.resolve(ManualAssessments.CARD)));
    String command =
        String.format(
                Locale.ROOT,
                "./inspector/calibration/calibrate statistics --seed %d --cards %d",
                seed,
                cards)
            + (reference == null ? "" : " --reference ../shared/reference")
            + " --report docs/corpus/statistics.md";
    double limit = SpecTables.open().pixelLimits().value("finger-match");
    CardStatistics drawn = CardStatistics.draw(seed, cards);
    Files.writeString(report, new StatisticsReport(drawn, real, limit).write(command));
    return 0;
  }
}
