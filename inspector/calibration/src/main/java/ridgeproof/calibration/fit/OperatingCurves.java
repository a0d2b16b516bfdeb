package ridgeproof.calibration.fit;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.apache.commons.csv.CSVPrinter;
import ridgeproof.calibration.print.Csv;
import ridgeproof.calibration.print.MeasuredPrint;

/**
 * For each case of each rule, what it would catch and what it would object to without reason, were
 * all of its limits stricter or laxer by the same share.
 */
public final class OperatingCurves {

  private static final double[] SHARES = {
    -0.5, -0.3, -0.2, -0.1, -0.05, 0, 0.05, 0.1, 0.2, 0.3, 0.5
  };

  private OperatingCurves() {}

  public static void write(
      List<LimitCriterion> plan, LimitTable table, List<MeasuredPrint> prints, Appendable out)
      throws IOException {
    CSVPrinter printer =
        new CSVPrinter(
            out,
            Csv.withHeader(
                List.of(
                    "rule",
                    "case",
                    "impression",
                    "looser",
                    "limits",
                    "false alarm rate",
                    "recall",
                    "clean prints",
                    "prints with the defect")));
    for (LimitCriterion fitCase : plan) {
      List<MeasuredPrint> kind =
          prints.stream().filter(p -> p.kind() == fitCase.kind() && p.isFound()).toList();
      List<MeasuredPrint> clean = kind.stream().filter(MeasuredPrint::isClean).toList();
      List<MeasuredPrint> wanted =
          kind.stream()
              .filter(p -> p.strength() >= LimitFit.STRONG)
              .filter(p -> p.defect().filter(fitCase.defects()::contains).isPresent())
              .toList();
      double[] limits = limits(fitCase, table);
      for (double share : SHARES) {
        printer.printRecord(
            fitCase.rule(),
            fitCase.name(),
            fitCase.kind().key(),
            String.format(Locale.ROOT, "%+.2f", share),
            words(fitCase, limits, share),
            rate(fitCase, limits, clean, share),
            rate(fitCase, limits, wanted, share),
            clean.size(),
            wanted.size());
      }
    }
    printer.flush();
  }

  private static double[] limits(LimitCriterion fitCase, LimitTable table) {
    List<Double> limits = new ArrayList<>();
    for (LimitCriterion.Bound bound : fitCase.bounds()) {
      for (LimitRow row : table.rows()) {
        boolean same =
            row.rule().equals(fitCase.rule())
                && row.caseName().equals(fitCase.name())
                && row.kind() == fitCase.kind()
                && row.measure() == bound.measure();
        OptionalDouble limit = row.least().isPresent() ? row.least() : row.most();
        if (same) {
          limits.add(limit.orElseThrow());
        }
      }
    }
    return limits.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private static String words(LimitCriterion fitCase, double[] limits, double share) {
    List<String> words = new ArrayList<>();
    for (int i = 0; i < limits.length; i++) {
      LimitCriterion.Bound bound = fitCase.bounds().get(i);
      double moved = limits[i] * (bound.below() ? 1 + share : 1 - share);
      words.add(
          String.format(
              Locale.ROOT, "%s %s %.4g", bound.measure().key(), bound.below() ? "<" : ">", moved));
    }
    return String.join(" and ", words);
  }

  private static String rate(
      LimitCriterion fitCase, double[] limits, List<MeasuredPrint> prints, double share) {
    if (prints.isEmpty()) {
      return "";
    }
    long caught = prints.stream().filter(p -> LimitFit.isCaught(fitCase, limits, p, share)).count();
    return String.format(Locale.ROOT, "%.4f", (double) caught / prints.size());
  }
}
