package ridgeproof.calibration;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import ridgeproof.calibration.fit.LimitCriterion;
import ridgeproof.calibration.fit.LimitFit;
import ridgeproof.calibration.fit.LimitTable;
import ridgeproof.calibration.fit.OperatingCurves;
import ridgeproof.calibration.fit.ReferenceTolerance;
import ridgeproof.calibration.print.ManualAssessments;
import ridgeproof.calibration.print.MeasuredPrint;
import ridgeproof.calibration.print.PrintSource;
import ridgeproof.calibration.print.SeedRange;

/** Finds the limits and writes them with their operating curves. */
@Command(
    name = "fit",
    mixinStandardHelpOptions = true,
    description = "Fits the limits on drawn prints; writes their table and operating curves.")
final class FitCommand implements Callable<Integer> {

  private static final String SOURCE = "fitted on the generated corpus, common practice";

  @Mixin PrintSource source;

  @Option(
      names = "--reference",
      paramLabel = "DIR",
      description = "public reference transactions: limits are widened to their sound prints")
  Path reference;

  @Option(names = "--limits", required = true, description = "the table of limits to write")
  Path limits;

  @Option(names = "--curves", required = true, description = "the operating curves to write")
  Path curves;

  @Spec CommandSpec spec;

  @Override
  public Integer call() throws IOException {
    List<MeasuredPrint> training = source.prints(SeedRange.TRAINING);
    List<LimitCriterion> plan = LimitCriterion.plan();
    LimitFit fit = new LimitFit(training);
    LimitTable table = fit.fit(plan, SOURCE);
    if (reference != null) {
      table = ReferenceTolerance.widened(table, soundPrints());
    }
    try (BufferedWriter out = Files.newBufferedWriter(limits)) {
      table.write(out);
    }
    try (BufferedWriter out = Files.newBufferedWriter(curves)) {
      OperatingCurves.write(plan, table, training, out);
    }
    spec.commandLine()
        .getErr()
        .println(
            String.format(
                Locale.ROOT,
                "%d rows; false alarms in clean training prints: %.2f %%",
                table.rows().size(),
                100 * fit.falseAlarms(table)));
    return 0;
  }

  private List<ReferenceTolerance.Sound> soundPrints() throws IOException {
    List<ReferenceTolerance.Sound> sound = new ArrayList<>();
    for (String file : ManualAssessments.WIDENING) {
      for (ManualAssessments.Seen seen : ManualAssessments.load().seen(reference, file)) {
        sound.add(new ReferenceTolerance.Sound(seen.print(), seen.judgement().accepted()));
      }
    }
    return sound;
  }
}
