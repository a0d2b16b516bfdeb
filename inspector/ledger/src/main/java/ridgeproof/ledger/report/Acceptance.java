package ridgeproof.ledger.report;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
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

  static Acceptance of(Cases cases) {
    Map<String, Attempt> firsts = new HashMap<>();
    Map<Integer, Long> days = new TreeMap<>();
    Map<LocalDate, Share> weeks = new TreeMap<>();
    Map<String, Share> stations = new TreeMap<>();
    Map<String, Share> operators = new TreeMap<>();
    Share all = new Share(0, 0);
    for (Sending sending : cases.sendings()) {
      Attempt submission = sending.submission();
      Attempt first = firsts.computeIfAbsent(submission.control(), c -> submission);
      if (sending.accepted()) {
        int waited = (int) (sending.response().day() - first.day());
        if (waited >= 0) {
          days.merge(waited, 1L, Long::sum);
        }
      }
      if (sending.first()) {
        Share one = new Share(sending.accepted() ? 1 : 0, 1);
        all = sum(all, one);
        weeks.merge(weekOf(submission.day()), one, Acceptance::sum);
        stations.merge(
            cases.stations().getOrDefault(submission.station(), new Station("", "", "")).name(),
            one,
            Acceptance::sum);
        operators.merge(submission.operator(), one, Acceptance::sum);
      }
    }
    return new Acceptance(all, weeks, stations, operators, days);
  }

  private static LocalDate weekOf(long day) {
    return LocalDate.ofEpochDay(day).with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
  }

  private static Share sum(Share one, Share other) {
    return new Share(one.of() + other.of(), one.all() + other.all());
  }

  /** With operators under other names. */
  Acceptance named(Function<String, String> names) {
    Map<String, Share> renamed = new TreeMap<>();
    byOperator.forEach(
        (operator, share) -> renamed.merge(names.apply(operator), share, Acceptance::sum));
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
