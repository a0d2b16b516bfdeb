package ridgeproof.ledger.report;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import ridgeproof.ledger.Station;

/**
 * How often the first sending was accepted, and how long it took.
 *
 * @param all over the whole ledger
 * @param byWeek by the Monday of the week of the submission
 * @param byStation by name
 * @param byOperator by keyed hash, empty text where the file names none; by name once named
 * @param days from the first submission to the acceptance, by number of days
 */
public record Acceptance(
    Share all,
    Map<LocalDate, Share> byWeek,
    Map<String, Share> byStation,
    Map<String, Share> byOperator,
    Map<Integer, Long> days) {

  private static final int DAYS_OF_WEEK = 7;

  /** 1970-01-01 was so many days after a Monday. */
  private static final int MONDAY = 3;

  static Acceptance of(Cases cases) {
    Map<String, Attempt> firsts = new HashMap<>();
    Map<Integer, Long> days = new TreeMap<>();
    ShareCounts<LocalDate> weeks = new ShareCounts<>();
    ShareCounts<Long> stations = new ShareCounts<>();
    ShareCounts<String> operators = new ShareCounts<>();
    ShareCounts<Boolean> all = new ShareCounts<>();
    for (Sending sending : cases.sendings()) {
      Attempt submission = sending.submission();
      boolean accepted = sending.accepted();
      Attempt first = firsts.computeIfAbsent(submission.control(), c -> submission);
      if (accepted) {
        int waited = (int) (sending.response().day() - first.day());
        if (waited >= 0) {
          days.merge(waited, 1L, Long::sum);
        }
      }
      if (sending.first()) {
        all.add(true, accepted);
        weeks.add(weekOf(submission.day()), accepted);
        stations.add(submission.station(), accepted);
        operators.add(submission.operator(), accepted);
      }
    }
    Map<String, Share> byStation = new TreeMap<>();
    stations
        .shares()
        .forEach(
            (station, share) ->
                byStation.merge(
                    cases.stations().getOrDefault(station, new Station("", "", "")).name(),
                    share,
                    Share::plus));
    return new Acceptance(
        all.of(true),
        new TreeMap<>(weeks.shares()),
        byStation,
        new TreeMap<>(operators.shares()),
        days);
  }

  private static LocalDate weekOf(long day) {
    return LocalDate.ofEpochDay(day - Math.floorMod(day + MONDAY, DAYS_OF_WEEK));
  }

  /** With operators under other names. */
  Acceptance named(Function<String, String> names) {
    Map<String, Share> renamed = new TreeMap<>();
    byOperator.forEach(
        (operator, share) -> renamed.merge(names.apply(operator), share, Share::plus));
    return new Acceptance(all, byWeek, byStation, renamed, days);
  }

  /** The days from the first submission to acceptance in bars. */
  public WaitingTimes waiting() {
    return WaitingTimes.of(new TreeMap<>(days));
  }

  /** Whether so many were accepted that parts of them may be told as shares. */
  public boolean hasTellingTimes() {
    return accepted() >= Share.MIN_CASES;
  }

  /** Accepted submissions. */
  public long accepted() {
    return days.values().stream().mapToLong(Long::longValue).sum();
  }

  /**
   * Days within which this share of the accepted submissions was accepted.
   *
   * @param share 0 to 1
   */
  public int daysOf(double share) {
    long wanted = Math.max(1, Math.round(share * accepted()));
    long seen = 0;
    int last = 0;
    for (Map.Entry<Integer, Long> entry : days.entrySet()) {
      last = entry.getKey();
      seen += entry.getValue();
      if (seen >= wanted) {
        return last;
      }
    }
    return last;
  }
}
