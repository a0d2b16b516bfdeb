package ridgeproof.report.prints;

import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiPredicate;
import ridgeproof.report.prints.Mark.Kind;
import ridgeproof.ridges.map.RotatedBox;
import ridgeproof.ridges.quality.BlockMap;

/** Collects marks on one image, and the words that say what they show. */
final class PictureMarks {

  private static final double CIRCLE = 0.5523;
  private static final double ARROW_HEAD = 0.18;

  private final List<Mark> drawn = new ArrayList<>();
  private final Set<String> notes = new LinkedHashSet<>();
  private final Rectangle2D.Double bounds = new Rectangle2D.Double(0, 0, -1, -1);

  List<Mark> list() {
    return List.copyOf(drawn);
  }

  List<String> notes() {
    return List.copyOf(notes);
  }

  /** What holds all marks; empty where there is none. */
  Rectangle2D bounds() {
    return bounds;
  }

  void note(String words) {
    notes.add(words);
  }

  void box(Kind kind, RotatedBox box) {
    double[] c = box.corners();
    add(kind, c[0], c[1], c[2], c[3], c[4], c[5], c[6], c[7], c[0], c[1]);
  }

  void rectangle(Kind kind, double left, double top, double right, double bottom) {
    add(kind, left, top, right, top, right, bottom, left, bottom, left, top);
  }

  void line(Kind kind, double... points) {
    add(kind, points);
  }

  /** With a head at its end, and at its start too where it measures something. */
  void arrow(Kind kind, Point2D from, Point2D to, boolean both) {
    Path2D path = new Path2D.Double();
    path.moveTo(from.getX(), from.getY());
    path.lineTo(to.getX(), to.getY());
    head(path, from, to);
    if (both) {
      head(path, to, from);
    }
    add(kind, path);
  }

  private static void head(Path2D path, Point2D from, Point2D to) {
    double x = (from.getX() - to.getX()) * ARROW_HEAD;
    double y = (from.getY() - to.getY()) * ARROW_HEAD;
    path.moveTo(to.getX() + x - y, to.getY() + y + x);
    path.lineTo(to.getX(), to.getY());
    path.lineTo(to.getX() + x + y, to.getY() + y - x);
  }

  void ring(Kind kind, double x, double y, double across, double down) {
    double cx = across * CIRCLE;
    double cy = down * CIRCLE;
    Path2D path = new Path2D.Double();
    path.moveTo(x - across, y);
    path.curveTo(x - across, y - cy, x - cx, y - down, x, y - down);
    path.curveTo(x + cx, y - down, x + across, y - cy, x + across, y);
    path.curveTo(x + across, y + cy, x + cx, y + down, x, y + down);
    path.curveTo(x - cx, y + down, x - across, y + cy, x - across, y);
    path.closePath();
    add(kind, path);
  }

  /** A question mark. */
  void question(Kind kind, double x, double y, double half) {
    Path2D path = new Path2D.Double();
    path.moveTo(x - half * 0.4, y - half * 0.35);
    path.curveTo(
        x - half * 0.4, y - half, x + half * 0.45, y - half, x + half * 0.4, y - half * 0.3);
    path.curveTo(x + half * 0.35, y, x, y, x, y + half * 0.35);
    path.moveTo(x, y + half * 0.65);
    path.lineTo(x, y + half * 0.8);
    add(kind, path);
  }

  /** The blocks of a print, filled row by row. */
  void ground(BlockMap map) {
    double side = map.blockPixels();
    Path2D path = new Path2D.Double();
    for (int row = 0; row < map.rows(); row++) {
      int start = -1;
      for (int column = 0; column <= map.columns(); column++) {
        boolean in = column < map.columns() && map.isPrint(column, row);
        if (in && start < 0) {
          start = column;
        } else if (!in && start >= 0) {
          path.append(
              new Rectangle2D.Double(start * side, row * side, (column - start) * side, side),
              false);
          start = -1;
        }
      }
    }
    add(Kind.GROUND, path);
  }

  /**
   * Hatches the blocks that are meant.
   *
   * @param meant by column and row
   * @return whether there are any
   */
  boolean hatch(BlockMap map, BiPredicate<Integer, Integer> meant) {
    double side = map.blockPixels();
    Path2D path = new Path2D.Double();
    for (int row = 0; row < map.rows(); row++) {
      for (int column = 0; column < map.columns(); column++) {
        boolean begins =
            meant.test(column, row)
                && (column == 0 || row + 1 == map.rows() || !meant.test(column - 1, row + 1));
        if (begins) {
          int steps = 1;
          while (column + steps < map.columns()
              && row - steps >= 0
              && meant.test(column + steps, row - steps)) {
            steps++;
          }
          path.moveTo(column * side, (row + 1) * side);
          path.lineTo((column + steps) * side, (row + 1 - steps) * side);
        }
      }
    }
    if (path.getCurrentPoint() == null) {
      return false;
    }
    add(Kind.HATCH, path);
    return true;
  }

  private void add(Kind kind, double... points) {
    Path2D path = new Path2D.Double();
    path.moveTo(points[0], points[1]);
    for (int i = 2; i < points.length; i += 2) {
      path.lineTo(points[i], points[i + 1]);
    }
    add(kind, path);
  }

  private void add(Kind kind, Path2D path) {
    drawn.add(new Mark(path, kind));
    Rectangle2D around = path.getBounds2D();
    if (bounds.width < 0) {
      bounds.setRect(around);
    } else {
      bounds.add(around);
    }
  }
}
