package ridgeproof.calibration;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVPrinter;

/**
 * The limits, and what is said of a print by them: a rule fires when all rows of one of its cases
 * are broken.
 */
record LimitTable(List<LimitRow> rows) {

  /** Of a box in which no print of the finger was found. */
  static final String NO_RIDGES = "RP-RDG-001";

  private static final String RESOURCE = "/ridgeproof/spec/limits/ridge-limits.csv";
  private static final List<String> COLUMNS =
      List.of("rule", "case", "impression", "measure", "least", "most", "unit", "source");

  LimitTable {
    rows = List.copyOf(rows);
  }

  /** The table that the examination works with. */
  static LimitTable inUse() {
    return new LimitTable(Csv.resource(RESOURCE).stream().map(LimitRow::of).toList());
  }

  /** The rules that object to a print. */
  Set<String> rulesAgainst(MeasuredPrint print) {
    if (!print.isFound()) {
      return Set.of(NO_RIDGES);
    }
    Map<String, List<LimitRow>> cases =
        rows.stream()
            .filter(row -> row.kind() == print.kind())
            .collect(
                Collectors.groupingBy(LimitRow::group, LinkedHashMap::new, Collectors.toList()));
    Set<String> rules = new TreeSet<>();
    for (List<LimitRow> one : cases.values()) {
      if (one.stream().allMatch(row -> row.isBroken(print))) {
        rules.add(one.get(0).rule());
      }
    }
    return rules;
  }

  void write(Appendable out) throws IOException {
    CSVPrinter printer = new CSVPrinter(out, Csv.withHeader(COLUMNS));
    for (LimitRow row : rows) {
      printer.printRecord(row.cells());
    }
    printer.flush();
  }
}
