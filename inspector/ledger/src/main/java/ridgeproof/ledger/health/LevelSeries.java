package ridgeproof.ledger.health;

import java.util.List;

/**
 * A measure person by person, with the place where its level changed.
 *
 * @param values in order of time, in the unit of the measure, less what is usual for the position
 * @param at index of the first value after the change
 */
public record LevelSeries(List<Double> values, int at) implements Evidence {

  public LevelSeries {
    values = List.copyOf(values);
  }
}
