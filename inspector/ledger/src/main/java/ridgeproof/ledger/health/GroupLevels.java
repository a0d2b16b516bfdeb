package ridgeproof.ledger.health;

import java.util.Arrays;
import java.util.List;
import ridgeproof.ledger.PrintMeasure;

/**
 * A measure of the people of each group.
 *
 * @param groups the one that the finding is about first
 */
public record GroupLevels(PrintMeasure measure, List<Group> groups) implements Evidence {

  private static final double FEW = 0.05;
  private static final double QUARTER = 0.25;

  public GroupLevels {
    groups = List.copyOf(groups);
  }

  /**
   * A group; values are in the unit of the measure.
   *
   * @param key name of the station, or keyed hash of the operator
   * @param low reached by all but 5 % of the people
   * @param quarter reached by three quarters of them
   * @param middle the median
   * @param threeQuarters reached by a quarter
   * @param high reached by 5 %
   */
  public record Group(
      String key,
      int people,
      double low,
      double quarter,
      double middle,
      double threeQuarters,
      double high) {

    static Group of(String key, double[] values) {
      double[] sorted = values.clone();
      Arrays.sort(sorted);
      return new Group(
          key,
          sorted.length,
          at(sorted, FEW),
          at(sorted, QUARTER),
          ChangePoint.median(sorted),
          at(sorted, 1 - QUARTER),
          at(sorted, 1 - FEW));
    }

    private static double at(double[] sorted, double share) {
      return sorted[(int) Math.round(share * (sorted.length - 1))];
    }
  }
}
