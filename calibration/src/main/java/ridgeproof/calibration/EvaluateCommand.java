package ridgeproof.calibration;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Judges prints that no limit was fitted on. */
@Command(
    name = "evaluate",
    mixinStandardHelpOptions = true,
    description = "Judges unseen cards by the limits in use and writes how well defects are found.")
final class EvaluateCommand implements Callable<Integer> {

  @Mixin PrintSource source;

  @Option(
      names = "--reference",
      paramLabel = "DIR",
      description = "public reference transactions, for the table of real prints")
  Path reference;

  @Option(names = "--report", required = true, description = "the Markdown file to write")
  Path report;

  @Override
  public Integer call() throws IOException {
    List<MeasuredPrint> prints = source.prints(Split.EVALUATION);
    LimitTable table = LimitTable.inUse();
    List<EyeTable.Seen> seen =
        reference == null ? List.of() : EyeTable.load().seen(reference, EyeTable.CARD);
    String command =
        "./ridgeproof-calibration evaluate "
            + source.options()
            + (reference == null ? "" : " --reference ../shared/reference")
            + " --report reports/detection.md";
    Files.writeString(report, new DetectionReport(prints, table.judge()).write(command, seen));
    return 0;
  }
}
