package ridgeproof.ledger.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import ridgeproof.ledger.health.PlatenMap;

/**
 * A platen with its stains and a circle around the spot, or a line where the sensor does not work;
 * a cell is one unit of the drawing.
 *
 * @param line whether it shows a line and no spot
 * @param cells those that show something, neighbors of one look together
 */
public record PlatenDrawing(
    int width,
    int height,
    int cellsAcross,
    int cellsDown,
    List<Cell> cells,
    boolean line,
    String ringX,
    String ringY,
    String ringRadius,
    String words)
    implements FaultPicture {

  private static final double MIN_SHOWN = 0.05;
  private static final double MIN_RADIUS = 2.5;

  /** Cells of a row beside each other. */
  public record Cell(int x, int y, int length, String style, String opacity) {}

  /** The drawing of a platen. */
  public static PlatenDrawing of(PlatenMap map) {
    List<Cell> cells = new ArrayList<>();
    for (int row = 0; row < map.height(); row++) {
      int column = 0;
      while (column < map.width()) {
        double share = map.stained().get(row * map.width() + column);
        int end = column + 1;
        while (end < map.width()
            && look(map.stained().get(row * map.width() + end)).equals(look(share))) {
          end++;
        }
        if (share < 0) {
          cells.add(new Cell(column, row, end - column, "covered", "1"));
        } else if (share >= MIN_SHOWN) {
          cells.add(new Cell(column, row, end - column, "stain", look(share)));
        }
        column = end;
      }
    }
    boolean row = map.spot().right() - map.spot().left() == map.width();
    boolean line = row || map.spot().bottom() - map.spot().top() == map.height();
    if (line) {
      for (int y = map.spot().top(); y < map.spot().bottom(); y++) {
        cells.add(new Cell(map.spot().left(), y, row ? map.width() : 1, "line", "0.75"));
      }
    }
    double across = map.spot().right() - map.spot().left();
    double down = map.spot().bottom() - map.spot().top();
    return new PlatenDrawing(
        map.width() + 2,
        map.height() + 2,
        map.width(),
        map.height(),
        cells,
        line,
        number(map.spot().left() + across / 2),
        number(map.spot().top() + down / 2),
        number(Math.max(MIN_RADIUS, Math.hypot(across, down) / 2 + 1.5)),
        line ? "Platen with the line drawn in red" : "Platen with the spot circled");
  }

  private static String look(double share) {
    return share < 0 ? "covered" : String.format(Locale.ROOT, "%.1f", share);
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }
}
