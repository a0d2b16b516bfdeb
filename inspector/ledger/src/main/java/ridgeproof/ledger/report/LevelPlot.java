package ridgeproof.ledger.report;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import ridgeproof.ledger.health.LevelSeries;

/**
 * A measure person by person, as a drawing of points with a line where it changed; lengths are in
 * units of the drawing.
 *
 * @param change where the line stands
 */
public record LevelPlot(int width, int height, String change, List<Dot> dots)
    implements FaultPicture {

  private static final int WIDTH = 600;
  private static final int HEIGHT = 110;
  private static final int MARGIN = 8;

  /** A person. */
  public record Dot(String x, String y) {}

  static LevelPlot of(LevelSeries series) {
    double low = Collections.min(series.values());
    double high = Math.max(Collections.max(series.values()), low + Double.MIN_NORMAL);
    double step = (double) (WIDTH - 2 * MARGIN) / Math.max(1, series.values().size() - 1);
    List<Dot> dots = new ArrayList<>();
    for (int i = 0; i < series.values().size(); i++) {
      double share = (series.values().get(i) - low) / (high - low);
      dots.add(
          new Dot(
              number(MARGIN + i * step), number(HEIGHT - MARGIN - share * (HEIGHT - 2 * MARGIN))));
    }
    return new LevelPlot(WIDTH, HEIGHT, number(MARGIN + (series.at() - 0.5) * step), dots);
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }
}
