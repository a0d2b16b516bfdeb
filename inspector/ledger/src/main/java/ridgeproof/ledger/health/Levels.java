package ridgeproof.ledger.health;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import ridgeproof.ledger.PrintMeasure;

/**
 * A measure person by person, made comparable: each print less the median of its position, and
 * where there are other stations less their median in the same month, since skin follows the
 * season.
 */
final class Levels {

  private static final int MIN_OTHERS = 10;
  private static final int MAX_FEW_STATIONS = 8;

  private final Visits visits;
  private final PrintMeasure measure;
  private final Map<Integer, Double> usual = new HashMap<>();
  private final Map<Long, List<Level>> byStation = new HashMap<>();
  private final Map<Integer, Double> ofAll = new HashMap<>();

  /** A value of one visit. */
  record Level(Visit visit, double value) {}

  Levels(Visits visits, PrintMeasure measure) {
    this.visits = visits;
    this.measure = measure;
    Map<Integer, List<Double>> byPosition = new HashMap<>();
    for (List<Visit> station : visits.byStation().values()) {
      for (Visit visit : station) {
        for (Shot shot : visit.shots()) {
          Double value = shot.measures().get(measure);
          if (value != null) {
            byPosition.computeIfAbsent(shot.position(), p -> new ArrayList<>()).add(value);
          }
        }
      }
    }
    byPosition.forEach((position, values) -> usual.put(position, median(values)));
  }

  private static double median(List<Double> values) {
    return ChangePoint.median(values.stream().mapToDouble(Double::doubleValue).toArray());
  }

  /** The median of all prints, to which differences are relative. */
  double typical() {
    return median(List.copyOf(usual.values()));
  }

  /** The visits of a station with their values less those usual for the positions. */
  List<Level> of(long station) {
    return byStation.computeIfAbsent(station, this::measured);
  }

  private List<Level> measured(long station) {
    List<Level> levels = new ArrayList<>();
    for (Visit visit : visits.byStation().getOrDefault(station, List.of())) {
      OptionalDouble mean =
          visit.shots().stream()
              .filter(shot -> shot.measures().containsKey(measure))
              .mapToDouble(shot -> shot.measures().get(measure) - usual.get(shot.position()))
              .average();
      mean.ifPresent(value -> levels.add(new Level(visit, value)));
    }
    return levels;
  }

  /**
   * The same less the median of the other stations in the same month. Months in which there is too
   * little of them are left out; without any other station the values are those of {@link #of}.
   */
  List<Level> againstOthers(long station) {
    Map<Integer, Double> medians = mediansWithout(station);
    return medians.isEmpty()
        ? of(station)
        : of(station).stream()
            .filter(level -> medians.containsKey(monthOf(level.visit())))
            .map(
                level ->
                    new Level(level.visit(), level.value() - medians.get(monthOf(level.visit()))))
            .toList();
  }

  /** Of many stations one more or less makes no difference. */
  private Map<Integer, Double> mediansWithout(long station) {
    boolean many = visits.byStation().size() > MAX_FEW_STATIONS;
    if (many && !ofAll.isEmpty()) {
      return ofAll;
    }
    Map<Integer, List<Double>> others = new HashMap<>();
    for (long other : visits.byStation().keySet()) {
      if (many || other != station) {
        for (Level level : of(other)) {
          others.computeIfAbsent(monthOf(level.visit()), m -> new ArrayList<>()).add(level.value());
        }
      }
    }
    Map<Integer, Double> medians = new HashMap<>();
    others.forEach(
        (month, values) -> {
          if (values.size() >= MIN_OTHERS) {
            medians.put(month, median(values));
          }
        });
    if (many) {
      ofAll.putAll(medians);
    }
    return medians;
  }

  private static int monthOf(Visit visit) {
    LocalDate day = LocalDate.ofEpochDay(visit.day());
    return day.getYear() * 12 + day.getMonthValue();
  }
}
