package ridgeproof.report.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import ridgeproof.report.page.ReportModel.PositionRow;
import ridgeproof.spec.layout.FingerPosition;

/**
 * A hand seen from its back, as it lies on a desk: five fingers, and in the palm the fingers of the
 * slap and the plain thumb. Units are those of the drawing, 300 wide and 280 high.
 *
 * @param rolls whether the fingers show rolled prints; otherwise they show the plain ones
 */
public record HandDiagram(String id, String name, String outline, List<Part> parts, boolean rolls) {

  static final int WIDTH = 300;
  static final int HEIGHT = 280;

  private static final int LAST_OF_CARD = 14;

  /** States that a finger also has where only slaps are sent. */
  private static final Set<PositionState> NO_ROLL =
      Set.of(PositionState.NOT_ASKED, PositionState.ACCOUNTED);

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

  /** The fingers of the slap, side by side in the palm. */
  private static final List<Shape> SLAP =
      List.of(
          new Shape(128, 186, 34, 54, 0),
          new Shape(164, 186, 34, 54, 0),
          new Shape(200, 186, 34, 54, 0),
          new Shape(236, 186, 34, 54, 0));

  private static final Shape PLAIN_THUMB = new Shape(151, 240, 74, 34, 0);
  private static final int SMALL = 60;
  private static final int SMALL_MARK_BELOW = 12;

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

    public boolean upright() {
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
      return upright() ? x + along(markBelow(), true) : left() + width - 22;
    }

    public int markY() {
      return upright() ? y + along(markBelow(), false) : y;
    }

    private int markBelow() {
      return height < SMALL ? SMALL_MARK_BELOW : MARK_BELOW;
    }

    /** A way down the sloping part, as its share across or down the drawing. */
    private int along(int way, boolean across) {
      double angle = Math.toRadians(slope);
      return (int) Math.round(across ? -way * Math.sin(angle) : way * Math.cos(angle));
    }
  }

  /**
   * Both hands; where only slaps are there the fingers themselves show them. None where no finger
   * is there or asked for.
   */
  public static List<HandDiagram> of(List<PositionRow> rows) {
    if (rows.stream().filter(row -> row.code() <= LAST_OF_CARD).allMatch(HandDiagram::isIdle)) {
      return List.of();
    }
    boolean rolls =
        rows.stream()
            .filter(row -> FingerPosition.isRolledBox(row.code()))
            .anyMatch(row -> !NO_ROLL.contains(row.state()));
    return List.of(hand("left", rows, true, rolls), hand("right", rows, false, rolls));
  }

  private static boolean isIdle(PositionRow row) {
    return row.state() == PositionState.NOT_ASKED
        && row.fingers().stream().allMatch(HandDiagram::isIdle);
  }

  private static HandDiagram hand(
      String name, List<PositionRow> rows, boolean mirrored, boolean rolls) {
    List<Part> parts = new ArrayList<>();
    int first = mirrored ? 6 : 1;
    PositionRow thumb = row(rows, mirrored ? 12 : 11);
    List<PositionRow> slap = row(rows, mirrored ? 14 : 13).fingers();
    for (int i = 0; i < FINGERS.size(); i++) {
      PositionRow plain = i == 0 ? thumb : slap.get(i - 1);
      parts.add(part(FINGERS.get(i), rolls ? row(rows, first + i) : plain, mirrored));
    }
    if (rolls) {
      for (int i = 0; i < SLAP.size(); i++) {
        parts.add(part(SLAP.get(i), slap.get(i), mirrored));
      }
      parts.add(part(PLAIN_THUMB, thumb, mirrored));
    }
    return new HandDiagram(
        name + "-hand", name + " hand", outline(mirrored), List.copyOf(parts), rolls);
  }

  /** The state of each part, for who does not see the drawing. */
  public String inWords() {
    return parts.stream()
        .map(part -> part.row().name() + ": " + part.row().state().words())
        .collect(Collectors.joining("; ", "", "."));
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
