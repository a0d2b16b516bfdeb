package ridgeproof.ledger.report;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * Shares by week, as a drawing of points with intervals; lengths are in units of the drawing.
 *
 * @param words what it shows, for those who do not see it
 */
public record WeekPlot(
    int width,
    int height,
    String words,
    List<Label> shares,
    List<Label> months,
    List<Point> points) {

  private static final int WIDTH = 900;
  private static final int HEIGHT = 220;
  private static final int LEFT = 48;
  private static final int RIGHT = 12;
  private static final int TOP = 12;
  private static final int BOTTOM = 26;
  private static final int QUARTERS = 4;
  private static final int MAX_LABELS = 14;

  /** A month's name is at most so long. */
  private static final int LABEL = 60;

  private static final DateTimeFormatter MONTH =
      DateTimeFormatter.ofPattern("MMM uuuu", Locale.ENGLISH);

  /** A text at a place of an axis. */
  public record Label(String at, String text) {}

  /** A week: the share and the bounds of its interval. */
  public record Point(String x, String y, String low, String high, String style, String words) {}

  static WeekPlot of(Map<LocalDate, Share> weeks) {
    String words = "Share accepted at first sending over " + weeks.size() + " weeks";
    return of(weeks, "week of ", words);
  }

  /**
   * The drawing of shares of other spans of time.
   *
   * @param shares by the first day of the span
   * @param span what is written before that day
   * @param words what the drawing shows
   */
  public static WeekPlot of(Map<LocalDate, Share> shares, String span, String words) {
    TreeMap<LocalDate, Share> sorted = new TreeMap<>(shares);
    List<Point> points = new ArrayList<>();
    List<Label> months = new ArrayList<>();
    List<Label> levels = new ArrayList<>();
    if (!sorted.isEmpty()) {
      LocalDate first = sorted.firstKey();
      long days = Math.max(1, ChronoUnit.DAYS.between(first, sorted.lastKey()));
      sorted.forEach((week, share) -> points.add(point(span + week, share, x(week, first, days))));
      long step = 1 + ChronoUnit.MONTHS.between(first, sorted.lastKey()) / MAX_LABELS;
      LocalDate month = first.withDayOfMonth(1).plusMonths(1);
      for (; !month.isAfter(sorted.lastKey()); month = month.plusMonths(step)) {
        double x = x(month, first, days);
        if (x <= WIDTH - LABEL) {
          months.add(new Label(number(x), MONTH.format(month)));
        }
      }
      for (int quarter = 0; quarter <= QUARTERS; quarter++) {
        levels.add(
            new Label(number(y((double) quarter / QUARTERS)), 100 * quarter / QUARTERS + " %"));
      }
    }
    return new WeekPlot(WIDTH, HEIGHT, words, levels, months, points);
  }

  boolean isEmpty() {
    return points.isEmpty();
  }

  private static Point point(String span, Share share, double x) {
    return new Point(
        number(x),
        number(y(share.value())),
        number(y(share.interval().low())),
        number(y(share.interval().high())),
        share.isTelling() ? "dot" : "few",
        span + ": " + share.words());
  }

  private static double x(LocalDate day, LocalDate first, long days) {
    return LEFT + (double) ChronoUnit.DAYS.between(first, day) / days * (WIDTH - LEFT - RIGHT);
  }

  private static double y(double share) {
    return TOP + (1 - share) * (HEIGHT - TOP - BOTTOM);
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }
}
