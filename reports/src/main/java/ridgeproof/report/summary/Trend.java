package ridgeproof.report.summary;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import ridgeproof.examination.Verdict;
import ridgeproof.report.words.Counted;

/**
 * Files by the time of their capture: as many as there are, and how many of these are READY.
 *
 * @param step {@code day}, {@code week} or {@code month}
 * @param most files of a bar
 */
public record Trend(String step, int most, List<Bar> bars) {

  public static final int WIDTH = 600;
  public static final int HEIGHT = 120;

  /** More bars than these are hard to read. */
  private static final int MAX_BARS = 40;

  private static final int DAYS_OF_WEEK = 7;

  /**
   * The files of a day, week or month.
   *
   * @param key for names of classes
   * @param label its first day, or the month
   */
  public record Bar(String key, String label, int files, int ready, double left, double width) {

    public String percent() {
      return Math.round(100.0 * ready / files) + " %";
    }
  }

  /** Whether there is a change to see: one day alone is a block of color. */
  public boolean hasSeveralBars() {
    return bars.size() > 1;
  }

  /** The files of the highest bar. */
  public String mostInWords() {
    return Counted.of(most, "file");
  }

  /** The height of so many files in the drawing. */
  public String height(int files) {
    return number((double) HEIGHT * files / Math.max(1, most));
  }

  /** Where a bar of so many files begins, from above. */
  public String top(int files) {
    return number(HEIGHT - (double) HEIGHT * files / Math.max(1, most));
  }

  public static String number(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }

  static Trend of(List<FolderSummary.FileRow> files) {
    List<LocalDate> days = files.stream().flatMap(file -> file.day().stream()).sorted().toList();
    if (days.isEmpty()) {
      return new Trend("day", 0, List.of());
    }
    String step = step(days.get(0), days.get(days.size() - 1));
    Map<LocalDate, int[]> counts = new TreeMap<>();
    for (FolderSummary.FileRow file : files) {
      file.day()
          .ifPresent(
              day -> {
                int[] count = counts.computeIfAbsent(start(day, step), key -> new int[2]);
                count[0]++;
                count[1] += file.verdict() == Verdict.READY ? 1 : 0;
              });
    }
    double width = (double) WIDTH / counts.size();
    List<Bar> bars = new ArrayList<>();
    counts.forEach(
        (start, count) ->
            bars.add(
                new Bar(
                    key(start),
                    label(start, step),
                    count[0],
                    count[1],
                    bars.size() * width,
                    Math.max(1, width - 2))));
    return new Trend(step, bars.stream().mapToInt(Bar::files).max().orElse(0), bars);
  }

  /** The bar that a day belongs to. */
  String keyOf(LocalDate day) {
    return key(start(day, step));
  }

  private static String step(LocalDate first, LocalDate last) {
    long days = ChronoUnit.DAYS.between(first, last);
    return days < MAX_BARS ? "day" : days < MAX_BARS * DAYS_OF_WEEK ? "week" : "month";
  }

  private static LocalDate start(LocalDate day, String step) {
    return switch (step) {
      case "week" -> day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
      case "month" -> day.withDayOfMonth(1);
      default -> day;
    };
  }

  private static String key(LocalDate start) {
    return "d" + start.toString().replaceAll("[^0-9]", "");
  }

  private static String label(LocalDate start, String step) {
    return step.equals("month") ? start.toString().substring(0, "2026-03".length()) : "" + start;
  }
}
