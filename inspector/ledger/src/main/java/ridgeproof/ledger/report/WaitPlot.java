package ridgeproof.ledger.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import ridgeproof.report.words.Counted;

/**
 * Times to acceptance, as a drawing of columns; lengths are in units of the drawing.
 *
 * @param words what it shows, for those who do not see it
 */
public record WaitPlot(int width, int height, int base, String words, List<Column> columns) {

  private static final int WIDTH = 900;
  private static final int HEIGHT = 200;
  private static final int BASE = 176;
  private static final int TOP = 18;
  private static final int LEFT = 8;
  private static final double FILLED = 0.8;

  /**
   * A column.
   *
   * @param middle where its texts stand
   * @param days below it
   * @param count above it, and empty text for none
   */
  public record Column(
      String x, String y, String width, String height, String middle, String days, String count) {}

  static WaitPlot of(WaitingTimes times) {
    List<Column> columns = new ArrayList<>();
    double step = (double) (WIDTH - 2 * LEFT) / Math.max(1, times.bars().size());
    for (int i = 0; i < times.bars().size(); i++) {
      WaitingTimes.Bar bar = times.bars().get(i);
      double high = (double) (BASE - TOP) * bar.count() / Math.max(1, times.most());
      double left = LEFT + i * step;
      columns.add(
          new Column(
              number(left + step * (1 - FILLED) / 2),
              number(BASE - high),
              number(step * FILLED),
              number(high),
              number(left + step / 2),
              bar.from() == bar.to() ? "" + bar.from() : bar.from() + "-" + bar.to(),
              bar.count() == 0 ? "" : "" + bar.count()));
    }
    long accepted = times.bars().stream().mapToLong(WaitingTimes.Bar::count).sum();
    String words =
        "Days from the first submission to acceptance, "
            + Counted.of(accepted, "accepted submission");
    return new WaitPlot(WIDTH, HEIGHT, BASE, words, columns);
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }
}
