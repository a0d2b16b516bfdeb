package ridgeproof.report.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import ridgeproof.report.page.Page.PositionRow;

/**
 * A hand seen from its back, as it lies on a desk: five fingers, and in the palm the plain
 * impressions. Units are those of the drawing, 300 wide and 280 high.
 */
public record HandDiagram(String id, String name, String outline, List<Part> parts) {

  static final int WIDTH = 300;
  static final int HEIGHT = 280;

  private static final int RADIUS = 17;
  private static final int NUMBER_ABOVE = 13;
  private static final int MARK_BELOW = 17;
  private static final int HALF_DIGIT = 6;

  /** Middle, size and slope of a part of the right hand. */
  private record Shape(int x, int y, int width, int height, int degrees) {}

  private static final List<Shape> FINGERS =
      List.of(
          new Shape(52, 172, 40, 86, -36),
          new Shape(108, 84, 39, 112, -9),
          new Shape(157, 70, 39, 124, 0),
          new Shape(205, 82, 39, 114, 7),
          new Shape(250, 112, 35, 92, 15));
  private static final Shape FOUR_FINGERS = new Shape(182, 184, 136, 36, 0);
  private static final Shape PLAIN_THUMB = new Shape(151, 234, 74, 36, 0);

  /**
   * The palm of the right hand: a line from the thumb's root round the heel to the little finger.
   */
  private static final int[] PALM = {86, 206, 104, 262, 140, 272, 220, 272, 252, 250, 258, 166};

  /**
   * A finger or a plain impression.
   *
   * @param slope degrees, clockwise
   */
  public record Part(PositionRow row, int x, int y, int width, int height, int slope) {

    public int left() {
      return x - width / 2;
    }

    public int top() {
      return y - height / 2;
    }

    public int radius() {
      return Math.min(RADIUS, Math.min(width, height) / 2);
    }

    boolean upright() {
      return height > width;
    }

    /** Where the number stands. */
    public int numberX() {
      return upright() ? x + along(-NUMBER_ABOVE, true) : left() + 24;
    }

    public int numberY() {
      return (upright() ? y + along(-NUMBER_ABOVE, false) : y) + HALF_DIGIT;
    }

    /** Where the middle of the mark stands. */
    public int markX() {
      return upright() ? x + along(MARK_BELOW, true) : left() + width - 22;
    }

    public int markY() {
      return upright() ? y + along(MARK_BELOW, false) : y;
    }

    /** A way down the sloping part, as its share across or down the drawing. */
    private int along(int way, boolean across) {
      double angle = Math.toRadians(slope);
      return (int) Math.round(across ? -way * Math.sin(angle) : way * Math.cos(angle));
    }
  }

  static List<HandDiagram> of(List<PositionRow> rows) {
    return List.of(hand("left", rows, true), hand("right", rows, false));
  }

  private static HandDiagram hand(String name, List<PositionRow> rows, boolean mirrored) {
    List<Part> parts = new ArrayList<>();
    int first = mirrored ? 6 : 1;
    for (int i = 0; i < FINGERS.size(); i++) {
      parts.add(part(FINGERS.get(i), row(rows, first + i), mirrored));
    }
    parts.add(part(FOUR_FINGERS, row(rows, mirrored ? 14 : 13), mirrored));
    parts.add(part(PLAIN_THUMB, row(rows, mirrored ? 12 : 11), mirrored));
    return new HandDiagram(name + "-hand", name + " hand", outline(mirrored), List.copyOf(parts));
  }

  private static PositionRow row(List<PositionRow> rows, int code) {
    return rows.stream().filter(row -> row.code() == code).findFirst().orElseThrow();
  }

  private static Part part(Shape shape, PositionRow row, boolean mirrored) {
    return new Part(
        row,
        across(shape.x(), mirrored),
        shape.y(),
        shape.width(),
        shape.height(),
        mirrored ? -shape.degrees() : shape.degrees());
  }

  private static String outline(boolean mirrored) {
    int[] x = new int[PALM.length];
    for (int i = 0; i < PALM.length; i++) {
      x[i] = i % 2 == 0 ? across(PALM[i], mirrored) : PALM[i];
    }
    return String.format(
        Locale.ROOT,
        "M%d %d Q%d %d %d %d L%d %d Q%d %d %d %d",
        x[0],
        x[1],
        x[2],
        x[3],
        x[4],
        x[5],
        x[6],
        x[7],
        x[8],
        x[9],
        x[10],
        x[11]);
  }

  private static int across(int x, boolean mirrored) {
    return mirrored ? WIDTH - x : x;
  }
}
