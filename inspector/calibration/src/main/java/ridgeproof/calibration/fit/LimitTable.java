package ridgeproof.calibration.fit;

import java.io.IOException;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import org.apache.commons.csv.CSVPrinter;
import ridgeproof.calibration.print.Csv;
import ridgeproof.calibration.print.MeasuredPrint;
import ridgeproof.examination.rules.ridges.RidgeLimitEvaluator;
import ridgeproof.spec.limit.RidgeLimit;

/**
 * The limits, and what is said of a print by them: a rule fires when all rows of one of its cases
 * are broken.
 */
public record LimitTable(List<LimitRow> rows) {

  /** Of a box in which no print of the finger was found. */
  static final String NO_RIDGES = "RP-RDG-001";

  private static final List<String> COLUMNS =
      List.of("rule", "case", "impression", "measure", "least", "most", "unit", "source");

  public LimitTable {
    rows = List.copyOf(rows);
  }

  /** The table that the examination works with. */
  public static LimitTable inUse() {
    return new LimitTable(RidgeLimit.load().stream().map(LimitRow::of).toList());
  }

  /** The rules that object to a print. */
  Set<String> rulesAgainst(MeasuredPrint print) {
    return judge().apply(print);
  }

  /** What tells for each of many prints which rules object to it, as an examination does. */
  public Function<MeasuredPrint, Set<String>> judge() {
    RidgeLimitEvaluator judge =
        new RidgeLimitEvaluator(rows.stream().map(LimitRow::limit).toList());
    return print ->
        print.isFound()
            ? new TreeSet<>(judge.faults(print.kind(), print::value).keySet())
            : Set.of(NO_RIDGES);
  }

  public void write(Appendable out) throws IOException {
    CSVPrinter printer = new CSVPrinter(out, Csv.withHeader(COLUMNS));
    for (LimitRow row : rows) {
      printer.printRecord(row.cells());
    }
    printer.flush();
  }
}
