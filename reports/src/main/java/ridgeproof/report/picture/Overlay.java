package ridgeproof.report.picture;

import java.util.Locale;
import ridgeproof.examination.facts.RidgeAnalysis;
import ridgeproof.ridges.matching.Minutia;
import ridgeproof.ridges.pattern.SingularPoint;

/**
 * What was seen of ridges as paths to lay over a picture, in the units of the picture.
 *
 * @param ridges where ridges are clear
 * @param boxes around prints
 * @param singular a ring at each core and a triangle at each delta
 * @param minutiae a stroke along the ridge from each
 */
public record Overlay(String ridges, String boxes, String singular, String minutiae) {

  private static final double SINGULAR = 14;
  private static final double STROKE = 11;

  /**
   * @param acrossScale units of the picture for one pixel across
   * @param downScale units of the picture for one pixel down
   */
  static Overlay of(RidgeAnalysis facts, double acrossScale, double downScale) {
    RidgeDrawing drawing = RidgeDrawing.of(facts);
    PathWords ridges = new PathWords(acrossScale, downScale);
    drawing.ridges().forEach(run -> ridges.box(run.x(), run.y(), run.width(), run.height()));
    PathWords boxes = new PathWords(acrossScale, downScale);
    drawing.boxes().forEach(boxes::closed);
    PathWords singular = new PathWords(acrossScale, downScale);
    for (SingularPoint core : drawing.cores()) {
      singular.ring(core.x(), core.y(), SINGULAR);
    }
    for (SingularPoint delta : drawing.deltas()) {
      singular.closed(
          new double[] {
            delta.x(),
            delta.y() - SINGULAR,
            delta.x() + SINGULAR,
            delta.y() + SINGULAR,
            delta.x() - SINGULAR,
            delta.y() + SINGULAR
          });
    }
    PathWords minutiae = new PathWords(acrossScale, downScale);
    for (Minutia minutia : drawing.minutiae()) {
      double turn = Math.toRadians(minutia.degrees());
      minutiae.ring(minutia.x(), minutia.y(), STROKE / 3);
      minutiae.line(
          minutia.x(),
          minutia.y(),
          minutia.x() + STROKE * Math.cos(turn),
          minutia.y() + STROKE * Math.sin(turn));
    }
    return new Overlay(ridges.text(), boxes.text(), singular.text(), minutiae.text());
  }

  /** Writes the path of an SVG. */
  private static final class PathWords {

    private final StringBuilder words = new StringBuilder();
    private final double across;
    private final double down;

    PathWords(double across, double down) {
      this.across = across;
      this.down = down;
    }

    void box(double x, double y, double width, double height) {
      move(x, y);
      words.append('h').append(number(width * across));
      words.append('v').append(number(height * down));
      words.append('h').append(number(-width * across)).append('z');
    }

    void closed(double[] corners) {
      move(corners[0], corners[1]);
      for (int i = 2; i < corners.length; i += 2) {
        words.append('L').append(point(corners[i], corners[i + 1]));
      }
      words.append('z');
    }

    void line(double fromX, double fromY, double toX, double toY) {
      move(fromX, fromY);
      words.append('L').append(point(toX, toY));
    }

    void ring(double x, double y, double radius) {
      move(x - radius, y);
      String arc = "a" + number(radius * across) + " " + number(radius * down) + " 0 1 0 ";
      words.append(arc).append(number(2 * radius * across)).append(" 0");
      words.append(arc).append(number(-2 * radius * across)).append(" 0");
    }

    private void move(double x, double y) {
      words.append('M').append(point(x, y));
    }

    private String point(double x, double y) {
      return number(x * across) + " " + number(y * down);
    }

    private static String number(double value) {
      return String.format(Locale.ROOT, "%.2f", value);
    }

    String text() {
      return words.toString();
    }
  }
}
