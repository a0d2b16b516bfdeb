package ridgeproof.ledger.health;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import ridgeproof.ledger.Entry;
import ridgeproof.ledger.store.LedgerQueries;

/**
 * What is wrong with the stations of a ledger.
 *
 * @param findings the surest first
 * @param people how many people of each station were looked at, by its name
 * @param seasons the share of dry prints by station and season
 */
public record StationHealth(
    List<HealthFinding> findings, Map<String, Integer> people, List<DrySeason> seasons) {

  /** Probability that a report without any fault behind it has a finding, at most. */
  public static final double ERROR_RATE = 0.01;

  /** A change of level can be found from so many people of a station on. */
  public static final int MIN_PEOPLE_FOR_A_CHANGE = 2 * ChangePoint.MIN_SIDE;

  /**
   * Every station is asked so many questions: six changes, spots, lines, encoder, scale, dryness.
   */
  private static final int QUESTIONS = 11;

  private static final long MAX_DAYS_APART = 10;

  public StationHealth {
    findings = List.copyOf(findings);
    seasons = List.copyOf(seasons);
  }

  /**
   * Looks at the last people of each station.
   *
   * @param lastDay later visits are not looked at
   */
  public static StationHealth of(LedgerQueries queries, LocalDate lastDay) {
    return of(Visits.load(queries, lastDay.toEpochDay()));
  }

  /**
   * Looks at entries that are in no ledger.
   *
   * @param byStation by what to call the station, in order of time
   */
  public static StationHealth of(Map<String, List<Entry>> byStation) {
    return of(Visits.of(byStation));
  }

  static StationHealth of(Visits visits) {
    int stations = Math.max(1, visits.byStation().size());
    double rate = ERROR_RATE / (stations * (QUESTIONS + 1));
    List<HealthFinding> found = new ArrayList<>();
    visits
        .byStation()
        .keySet()
        .forEach(station -> found.addAll(new PlatenMarks(visits, station, rate).find()));
    found.addAll(new Changes(visits, rate).find());
    found.addAll(new Comparisons(visits, rate).find());
    found.sort(Comparator.comparingDouble(HealthFinding::probability));
    Map<String, Integer> people = new TreeMap<>();
    visits
        .byStation()
        .forEach((station, all) -> people.merge(visits.nameOf(station), all.size(), Integer::sum));
    return new StationHealth(gathered(found), people, DrySeason.of(visits));
  }

  /** Changes that come with a new encoder, or with ghosts, are one event with it. */
  private static List<HealthFinding> gathered(List<HealthFinding> found) {
    List<HealthFinding> left = found;
    for (StationFault cause : List.of(StationFault.ENCODER, StationFault.GHOST)) {
      left = gathered(left, cause);
    }
    return left;
  }

  private static List<HealthFinding> gathered(List<HealthFinding> found, StationFault cause) {
    List<HealthFinding> causes =
        found.stream()
            .filter(finding -> finding.fault() == cause && finding.since().isPresent())
            .toList();
    return found.stream()
        .filter(finding -> causes.stream().noneMatch(event -> isConsequence(finding, event)))
        .map(
            finding ->
                causes.contains(finding)
                    ? finding.explaining(
                        found.stream()
                            .filter(other -> isConsequence(other, finding))
                            .map(HealthFinding::fault)
                            .distinct()
                            .toList())
                    : finding)
        .toList();
  }

  private static boolean isConsequence(HealthFinding other, HealthFinding event) {
    return follows(event.fault(), other.fault())
        && other.station().equals(event.station())
        && other.since().isPresent()
        && Math.abs(other.since().get().toEpochDay() - event.since().orElseThrow().toEpochDay())
            <= MAX_DAYS_APART;
  }

  /** What a program does to pixels changes them all; what is left on a platen darkens parts. */
  private static boolean follows(StationFault cause, StationFault other) {
    return switch (cause) {
      case ENCODER ->
          switch (other) {
            case COMPRESSION, CONTRAST, BACKGROUND, GHOST, SCALE -> true;
            default -> false;
          };
      case GHOST -> other == StationFault.LIGHT || other == StationFault.BACKGROUND;
      default -> false;
    };
  }
}
