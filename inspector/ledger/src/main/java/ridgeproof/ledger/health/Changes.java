package ridgeproof.ledger.health;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import ridgeproof.ledger.PrintMeasure;

/** Changes of level of a station, by the rank test for a change point. */
final class Changes {

  /** A smaller change does not matter to a bureau, however sure it is. */
  private static final Map<PrintMeasure, Double> MIN_CHANGE =
      Map.of(
          PrintMeasure.GROUND, 4.0,
          PrintMeasure.CONTRAST, 8.0,
          PrintMeasure.UNEVENNESS, 6.0,
          PrintMeasure.GHOST, 0.02);

  /** The same as a part of the usual value. */
  private static final Map<PrintMeasure, Double> MIN_RELATIVE_CHANGE =
      Map.of(PrintMeasure.RIDGE_PERIOD, 0.03, PrintMeasure.COMPRESSION, 0.15);

  private static final int ENDS = 20;
  private static final long MAX_DAYS_APART = 31;

  private final Visits visits;
  private final double rate;

  Changes(Visits visits, double rate) {
    this.visits = visits;
    this.rate = rate;
  }

  /** A change of one station. */
  private record Found(
      long station, PrintMeasure measure, ChangePoint point, LocalDate day, LevelSeries series) {
    double size() {
      return point.after() - point.before();
    }
  }

  List<HealthFinding> find() {
    List<HealthFinding> findings = new ArrayList<>();
    for (PrintMeasure measure : PrintMeasure.values()) {
      StationFault.ofChange(measure)
          .ifPresent(
              fault -> {
                for (Found found : ofMeasure(measure)) {
                  findings.add(finding(fault, found));
                }
              });
    }
    visits.byStation().keySet().forEach(station -> encoder(station).ifPresent(findings::add));
    return findings;
  }

  private List<Found> ofMeasure(PrintMeasure measure) {
    Levels levels = new Levels(visits, measure);
    List<Found> all = new ArrayList<>();
    for (long station : visits.byStation().keySet()) {
      change(station, measure, levels).ifPresent(all::add);
    }
    return withoutReflections(all);
  }

  /**
   * A change of the station itself that is also one against the others: what season does to skin is
   * the same everywhere, and a station whose neighbor changes has not changed itself.
   */
  private Optional<Found> change(long station, PrintMeasure measure, Levels levels) {
    Optional<Found> own = change(station, measure, levels, levels.of(station));
    Optional<Found> against = change(station, measure, levels, levels.againstOthers(station));
    return own.filter(
        found ->
            against.isPresent()
                && found.size() * against.get().size() > 0
                && Math.abs(found.day().toEpochDay() - against.get().day().toEpochDay())
                    <= MAX_DAYS_APART);
  }

  private Optional<Found> change(
      long station, PrintMeasure measure, Levels levels, List<Levels.Level> series) {
    return ChangePoint.of(series.stream().mapToDouble(Levels.Level::value).toArray())
        .filter(point -> point.probability() <= rate)
        .filter(point -> matters(measure, point, levels))
        .map(
            point ->
                new Found(
                    station,
                    measure,
                    point,
                    LocalDate.ofEpochDay(series.get(point.at()).visit().day()),
                    new LevelSeries(
                        series.stream().map(Levels.Level::value).toList(), point.at())));
  }

  private static boolean matters(PrintMeasure measure, ChangePoint point, Levels levels) {
    double least =
        MIN_CHANGE.containsKey(measure)
            ? MIN_CHANGE.get(measure)
            : MIN_RELATIVE_CHANGE.get(measure) * levels.typical();
    return Math.abs(point.after() - point.before()) >= least;
  }

  /** A station that changes makes the others change against it, the other way and less. */
  private static List<Found> withoutReflections(List<Found> all) {
    return all.stream()
        .filter(
            found ->
                all.stream()
                    .noneMatch(
                        other ->
                            other.station() != found.station()
                                && other.size() * found.size() < 0
                                && Math.abs(other.size()) > Math.abs(found.size())
                                && Math.abs(other.day().toEpochDay() - found.day().toEpochDay())
                                    <= MAX_DAYS_APART))
        .toList();
  }

  private HealthFinding finding(StationFault fault, Found found) {
    return new HealthFinding(
        fault,
        visits.nameOf(found.station()),
        Optional.empty(),
        Optional.of(found.day()),
        Optional.empty(),
        words(found),
        found.point().probability(),
        List.of(),
        found.series());
  }

  private static String words(Found found) {
    double size = found.size();
    return switch (found.measure()) {
      case GHOST ->
          String.format(Locale.ROOT, "%+.1f %% of the bare platen show a pattern", 100 * size);
      case RIDGE_PERIOD ->
          String.format(Locale.ROOT, "distance of the ridges changed by %+.3f mm", size);
      case COMPRESSION -> String.format(Locale.ROOT, "compression changed by %+.1f to 1", size);
      default -> String.format(Locale.ROOT, "changed by %+.0f gray levels (of 256)", size);
    };
  }

  /** The encoder that most of the first people met against the one that most of the last met. */
  private Optional<HealthFinding> encoder(long station) {
    List<Visit> all =
        visits.byStation().get(station).stream().filter(v -> !encoderOf(v).isEmpty()).toList();
    if (all.size() < 2 * ENDS) {
      return Optional.empty();
    }
    String first = mode(all.subList(0, ENDS));
    String last = mode(all.subList(all.size() - ENDS, all.size()));
    if (first.equals(last)) {
      return Optional.empty();
    }
    double[] isLast = all.stream().mapToDouble(v -> encoderOf(v).equals(last) ? 1 : 0).toArray();
    return ChangePoint.of(isLast)
        .filter(point -> point.probability() <= rate && point.after() > point.before())
        .map(
            point ->
                new HealthFinding(
                    StationFault.ENCODER,
                    visits.nameOf(station),
                    Optional.empty(),
                    Optional.of(LocalDate.ofEpochDay(all.get(point.at()).day())),
                    Optional.empty(),
                    "before: " + first + "; after: " + last,
                    point.probability(),
                    List.of(),
                    new LevelSeries(Arrays.stream(isLast).boxed().toList(), point.at())));
  }

  private static String encoderOf(Visit visit) {
    return visit.shots().stream()
        .map(Shot::encoder)
        .filter(encoder -> !encoder.isEmpty())
        .findFirst()
        .orElse("");
  }

  private static String mode(List<Visit> visits) {
    Map<String, Integer> counts = new HashMap<>();
    visits.forEach(visit -> counts.merge(encoderOf(visit), 1, Integer::sum));
    return counts.entrySet().stream()
        .max(Comparator.comparingInt(Map.Entry::getValue))
        .orElseThrow()
        .getKey();
  }
}
