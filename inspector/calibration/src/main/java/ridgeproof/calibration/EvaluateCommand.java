package ridgeproof.calibration;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import ridgeproof.calibration.evaluation.DetectionReport;
import ridgeproof.calibration.evaluation.FileTrial;
import ridgeproof.calibration.evaluation.RealCard;
import ridgeproof.calibration.evaluation.SequenceTrial;
import ridgeproof.calibration.fit.LimitTable;
import ridgeproof.calibration.print.DrawOptions;
import ridgeproof.calibration.print.ManualAssessments;
import ridgeproof.calibration.print.SeedRange;
import ridgeproof.calibration.real.CardsSection;
import ridgeproof.calibration.real.LeadingSection;
import ridgeproof.examination.rules.ridges.MatchLimits;
import ridgeproof.ridges.matching.SequenceLimits;
import ridgeproof.spec.SpecTables;

/** Judges files that no limit was fitted on. */
@Command(
    name = "evaluate",
    mixinStandardHelpOptions = true,
    description =
        "Examines unseen cards by the limits in use and writes how well defects are found.")
final class EvaluateCommand implements Callable<Integer> {

  @Mixin DrawOptions draw;

  @Option(
      names = "--sequence-cards",
      paramLabel = "N",
      defaultValue = "0",
      description = "clean cards whose rolled prints are swapped (default: none)")
  int sequenceCards;

  @Option(
      names = "--exchanges",
      paramLabel = "N",
      defaultValue = "5",
      description = "exchanges of two rolls of each of these cards (default: 5)")
  int exchanges;

  @Option(
      names = "--reference",
      paramLabel = "DIR",
      description = "public reference transactions, for the table of real prints")
  Path reference;

  @Option(names = "--report", required = true, description = "the Markdown file to write")
  Path report;

  @Override
  public Integer call() throws IOException {
    long seed = SeedRange.EVALUATION.checked(draw.seed);
    Optional<RealCard> card = Optional.empty();
    List<ManualAssessments.Seen> seen = List.of();
    if (reference != null) {
      card = Optional.of(RealCard.examined(reference.resolve(ManualAssessments.CARD)));
      seen = ManualAssessments.load().seen(reference, ManualAssessments.CARD);
    }
    SequenceLimits limits = MatchLimits.usual(SpecTables.open());
    DetectionReport detection =
        new DetectionReport(new FileTrial(draw).examine(draw.cards), LimitTable.inUse().judge());
    List<SequenceTrial.Card> sequence =
        new SequenceTrial(seed, exchanges, limits).run(sequenceCards);
    Files.writeString(
        report,
        LeadingSection.kept(
            report, CardsSection.TITLE, detection.write(command(), sequence, card, seen)));
    return 0;
  }

  private String command() {
    return "./inspector/calibration/calibrate evaluate "
        + draw.options()
        + (sequenceCards == 0
            ? ""
            : " --sequence-cards " + sequenceCards + " --exchanges " + exchanges)
        + (reference == null ? "" : " --reference ../shared/reference")
        + (draw.aged
            ? " --report docs/evaluation/detection-aged.md"
            : " --report docs/evaluation/detection.md");
  }
}
