package ridgeproof.calibration;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import ridgeproof.calibration.fit.LimitTable;
import ridgeproof.calibration.real.EyeBox;
import ridgeproof.calibration.real.RealReport;
import ridgeproof.calibration.real.RealSet;

/** Judges real single prints and segments of real cards. */
@Command(
    name = "real",
    mixinStandardHelpOptions = true,
    description = "Measures score, findings and segmentation on real prints; writes numbers only.")
final class RealCommand implements Callable<Integer> {

  @Option(
      names = "--prints",
      required = true,
      paramLabel = "DIR",
      description = "a folder with one folder for each set of single prints at 500 ppi")
  Path prints;

  @Option(
      names = "--reference",
      paramLabel = "DIR",
      description = "public reference transactions, for the boxes drawn by eye")
  Path reference;

  @Option(names = "--report", required = true, description = "the Markdown file to write")
  Path report;

  @Override
  public Integer call() throws IOException {
    RealReport text = new RealReport(LimitTable.inUse().judge());
    List<EyeBox.Overlap> overlaps = reference == null ? List.of() : EyeBox.overlaps(reference);
    Files.writeString(report, text.write(RealSet.all(prints), overlaps));
    return 0;
  }
}
