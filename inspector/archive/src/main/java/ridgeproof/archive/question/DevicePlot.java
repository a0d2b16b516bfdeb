package ridgeproof.archive.question;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import ridgeproof.report.words.Counted;

/**
 * How the scores of the fingers of a device are spread, as a drawing of columns; lengths are in
 * units of the drawing.
 *
 * @param words what it shows, for those who do not see it
 */
public record DevicePlot(String device, String words, int width, int height, List<Column> columns) {

  private static final int WIDTH = 420;
  private static final int HEIGHT = 130;
  private static final int TOP = 14;
  private static final int BOTTOM = 20;
  private static final int LEFT = 8;
  private static final int COLUMNS = 10;
  private static final int STEP = 40;
  private static final int GAP = 4;
  private static final double PERCENT = 100;

  /** The fingers of ten scores. */
  public record Column(
      String x, String y, int width, String height, String middle, String from, String share) {}

  /**
   * The drawing.
   *
   * @param fingers how many have a score from 0, 10, and so on
   */
  static DevicePlot of(String device, Map<Integer, Long> fingers) {
    long all = fingers.values().stream().mapToLong(Long::longValue).sum();
    long largest = fingers.values().stream().mapToLong(Long::longValue).max().orElse(1);
    List<Column> columns = new ArrayList<>();
    List<String> words = new ArrayList<>();
    for (int i = 0; i < COLUMNS; i++) {
      long count = fingers.getOrDefault(i * COLUMNS, 0L);
      double height = (double) count / largest * (HEIGHT - TOP - BOTTOM);
      String share = String.format(Locale.ROOT, "%.0f %%", PERCENT * count / Math.max(1, all));
      columns.add(
          new Column(
              String.valueOf(LEFT + i * STEP),
              number(HEIGHT - BOTTOM - height),
              STEP - GAP,
              number(height),
              number(LEFT + i * STEP + (STEP - GAP) / 2.0),
              String.valueOf(i * COLUMNS),
              count == 0 ? "" : share));
      words.add("from " + i * COLUMNS + ": " + share);
    }
    return new DevicePlot(
        device + ", " + Counted.of(all, "finger"),
        "Scores of " + Counted.of(all, "finger") + ", " + String.join(", ", words),
        WIDTH,
        HEIGHT,
        columns);
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }
}
