package ridgeproof.report.summary;

import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import ridgeproof.examination.FindingsReport;
import ridgeproof.report.page.PositionState;
import ridgeproof.report.page.PositionStates;
import ridgeproof.report.page.ReportModel.PositionRow;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.CodeTable;

/** In how many files each friction ridge position has to be looked at again, or is missing. */
final class PositionCounts {

  record PositionCount(int code, String name, int doubtful, int missing) {

    private PositionCount and(PositionState state) {
      return new PositionCount(
          code,
          name,
          doubtful + (state == PositionState.DOUBTFUL ? 1 : 0),
          missing + (state == PositionState.MISSING ? 1 : 0));
    }
  }

  private final CodeTable known;
  private final TreeMap<Integer, PositionCount> counts = new TreeMap<>();

  PositionCounts(SpecTables tables) {
    this.known = tables.codes("friction-ridge-positions");
  }

  void add(FindingsReport report) {
    for (PositionRow row : new PositionStates(report).rows()) {
      boolean told = row.state() == PositionState.DOUBTFUL || row.state() == PositionState.MISSING;
      // A damaged file can claim any number as a position; only the standard's are counted.
      if (told && known.find(Integer.toString(row.code())).isPresent()) {
        PositionCount before =
            counts.getOrDefault(row.code(), new PositionCount(row.code(), row.name(), 0, 0));
        counts.put(row.code(), before.and(row.state()));
      }
    }
  }

  /** In most files first. */
  List<PositionCount> commonest() {
    return counts.values().stream()
        .sorted(
            Comparator.comparingInt((PositionCount count) -> -count.doubtful() - count.missing())
                .thenComparing(PositionCount::code))
        .toList();
  }
}
