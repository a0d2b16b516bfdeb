package ridgeproof.ledger.report;

import java.util.function.UnaryOperator;
import ridgeproof.ledger.health.GroupLevels;
import ridgeproof.ledger.health.HealthFinding;
import ridgeproof.ledger.health.LevelSeries;
import ridgeproof.ledger.health.PlatenMap;
import ridgeproof.ledger.health.SeasonShares;

/** The drawing beside a finding on a station or an operator. */
public sealed interface FaultPicture permits PlatenDrawing, LevelPlot, SpreadTable {

  /**
   * The drawing of what a finding rests on.
   *
   * @param operator what to call the operator of a keyed hash
   */
  static FaultPicture of(HealthFinding finding, UnaryOperator<String> operator) {
    if (finding.evidence() instanceof PlatenMap map) {
      return PlatenDrawing.of(map);
    }
    if (finding.evidence() instanceof LevelSeries series) {
      return LevelPlot.of(series);
    }
    if (finding.evidence() instanceof GroupLevels levels) {
      return SpreadTable.of(
          levels, finding.operator().isPresent() ? operator : UnaryOperator.identity());
    }
    return SpreadTable.of((SeasonShares) finding.evidence());
  }
}
