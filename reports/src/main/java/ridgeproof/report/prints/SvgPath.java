package ridgeproof.report.prints;

import java.awt.Shape;
import java.awt.geom.PathIterator;
import java.util.Locale;

/** Writes a shape as the path of an SVG, to a tenth of a unit. */
final class SvgPath {

  private SvgPath() {}

  static String of(Shape shape) {
    StringBuilder path = new StringBuilder();
    double[] points = new double[6];
    for (PathIterator at = shape.getPathIterator(null); !at.isDone(); at.next()) {
      switch (at.currentSegment(points)) {
        case PathIterator.SEG_MOVETO -> append(path, 'M', points, 2);
        case PathIterator.SEG_LINETO -> append(path, 'L', points, 2);
        case PathIterator.SEG_QUADTO -> append(path, 'Q', points, 4);
        case PathIterator.SEG_CUBICTO -> append(path, 'C', points, 6);
        default -> path.append('Z');
      }
    }
    return path.toString();
  }

  private static void append(StringBuilder path, char command, double[] points, int count) {
    path.append(command);
    for (int i = 0; i < count; i++) {
      path.append(i == 0 ? "" : " ").append(number(points[i]));
    }
  }

  private static String number(double value) {
    String text = String.format(Locale.ROOT, "%.1f", value);
    return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
  }
}
