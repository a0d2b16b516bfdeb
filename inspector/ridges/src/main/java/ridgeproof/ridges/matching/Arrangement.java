package ridgeproof.ridges.matching;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ridgeproof.spec.layout.FingerPosition;

/**
 * Which plain print belongs to which roll, decided for all prints of a card together: each roll has
 * one plain print at most, and what all pairs weigh together decides. So the two prints of an
 * exchange speak for each other, and a faint print is placed by what is left.
 */
final class Arrangement {

  private final List<FingerPosition> plains;
  private final List<FingerPosition> rolls;
  private final SequenceLimits limits;
  private final double[][] values;
  private final Assignment best;
  private final Map<FingerPosition, Place> places = new EnumMap<>(FingerPosition.class);

  /**
   * Where a plain print belongs. All odds are powers of ten.
   *
   * @param roll nothing where it belongs to no roll
   * @param overOwn odds against its own box; 0 where it belongs there
   * @param overOthers odds against any other place; 0 where it belongs into its own box
   * @param evidence for its own box against any other roll, without regard to prior odds; 0 where
   *     it does not belong there
   */
  record Place(Optional<FingerPosition> roll, double overOwn, double overOthers, double evidence) {}

  Arrangement(SimilarityMatrix matrix, SequenceLimits limits) {
    this.plains = matrix.plains();
    this.rolls = matrix.rolls();
    this.limits = limits;
    values = values(matrix);
    best = Assignment.best(values);
    for (int i = 0; i < plains.size(); i++) {
      places.put(plains.get(i), placed(i));
    }
  }

  /** A column for each roll, and for each plain print one that means none of them. */
  private double[][] values(SimilarityMatrix matrix) {
    double[][] values = new double[plains.size()][rolls.size() + plains.size()];
    for (int i = 0; i < plains.size(); i++) {
      FingerPosition plain = plains.get(i);
      for (int j = 0; j < rolls.size(); j++) {
        values[i][j] = limits.weight(matrix.plainToRoll(plain, rolls.get(j)));
        values[i][j] += rolls.get(j) == plain ? limits.placePrior() : 0;
      }
      for (int j = 0; j < plains.size(); j++) {
        // Where its own roll is not there, to belong to none is to be in place.
        double none = rolls.contains(plain) ? -limits.strangerPrior() : limits.placePrior();
        values[i][rolls.size() + j] = i == j ? none : Assignment.FORBIDDEN;
      }
    }
    return values;
  }

  private Place placed(int plain) {
    int column = best.columns()[plain];
    int own = ownColumn(plain);
    Optional<FingerPosition> roll =
        column < rolls.size() ? Optional.of(rolls.get(column)) : Optional.empty();
    if (column == own) {
      return new Place(roll, 0, 0, evidence(plain, own));
    }
    double[] elsewhere = values[plain].clone();
    elsewhere[column] = Assignment.FORBIDDEN;
    double[] home = new double[elsewhere.length];
    Arrays.fill(home, Assignment.FORBIDDEN);
    home[own] = values[plain][own];
    return new Place(
        roll, best.value() - with(plain, home), best.value() - with(plain, elsewhere), 0);
  }

  /** At least two prints change their places when one does. */
  private double evidence(int plain, int own) {
    double[] elsewhere = values[plain].clone();
    elsewhere[own] = Assignment.FORBIDDEN;
    elsewhere[rolls.size() + plain] = Assignment.FORBIDDEN;
    double other = with(plain, elsewhere);
    return other <= Assignment.FORBIDDEN / 2
        ? Double.POSITIVE_INFINITY
        : best.value() - other - 2 * limits.placePrior();
  }

  private int ownColumn(int plain) {
    int own = rolls.indexOf(plains.get(plain));
    return own < 0 ? rolls.size() + plain : own;
  }

  private double with(int plain, double[] row) {
    double[][] changed = values.clone();
    changed[plain] = row;
    return Assignment.best(changed).value();
  }

  /** Where the plain print of this name belongs. */
  Place place(FingerPosition plain) {
    return places.get(plain);
  }

  /** Where all of them belong, of the plain prints that do not belong to their own roll. */
  Map<FingerPosition, FingerPosition> moved() {
    Map<FingerPosition, FingerPosition> moved = new EnumMap<>(FingerPosition.class);
    for (FingerPosition plain : plains) {
      places
          .get(plain)
          .roll()
          .filter(roll -> roll != plain)
          .ifPresent(roll -> moved.put(plain, roll));
    }
    return moved;
  }
}
