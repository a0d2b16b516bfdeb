package ridgeproof.ridges.matching;

import java.util.List;

/**
 * How one print lies on another: turned, scaled and shifted, never mirrored. Lengths are in pixels
 * of the two images.
 *
 * @param a the scale times the cosine of the turn
 * @param b the scale times the sine of the turn
 * @param x shift to the right
 * @param y shift downward
 * @param pairs minutiae that both prints have
 * @param left least x of these in the first image; the other three likewise
 */
public record PrintAlignment(
    double a,
    double b,
    double x,
    double y,
    int pairs,
    double left,
    double top,
    double right,
    double bottom) {

  /** The place in the first image of a place in the second, across. */
  public double firstX(double secondX, double secondY) {
    return a * secondX - b * secondY + x;
  }

  /** The place in the first image of a place in the second, downward. */
  public double firstY(double secondX, double secondY) {
    return b * secondX + a * secondY + y;
  }

  /** The place in the second image of a place in the first, across. */
  public double secondX(double firstX, double firstY) {
    return (a * (firstX - x) + b * (firstY - y)) / (a * a + b * b);
  }

  /** The place in the second image of a place in the first, downward. */
  public double secondY(double firstX, double firstY) {
    return (a * (firstY - y) - b * (firstX - x)) / (a * a + b * b);
  }

  /** Degrees by which the second is turned clockwise to lie on the first. */
  public double degrees() {
    return Math.toDegrees(Math.atan2(b, a));
  }

  /** The least squares fit of places that belong together; at least two that differ. */
  static PrintAlignment fit(List<Minutia> first, List<Minutia> second) {
    int n = first.size();
    double mx = first.stream().mapToDouble(Minutia::x).average().orElse(0);
    double my = first.stream().mapToDouble(Minutia::y).average().orElse(0);
    double ux = second.stream().mapToDouble(Minutia::x).average().orElse(0);
    double uy = second.stream().mapToDouble(Minutia::y).average().orElse(0);
    double dot = 0;
    double cross = 0;
    double square = 0;
    for (int i = 0; i < n; i++) {
      double px = second.get(i).x() - ux;
      double py = second.get(i).y() - uy;
      double qx = first.get(i).x() - mx;
      double qy = first.get(i).y() - my;
      dot += px * qx + py * qy;
      cross += px * qy - py * qx;
      square += px * px + py * py;
    }
    double a = dot / square;
    double b = cross / square;
    return new PrintAlignment(
        a,
        b,
        mx - a * ux + b * uy,
        my - b * ux - a * uy,
        n,
        first.stream().mapToDouble(Minutia::x).min().orElse(0),
        first.stream().mapToDouble(Minutia::y).min().orElse(0),
        first.stream().mapToDouble(Minutia::x).max().orElse(0),
        first.stream().mapToDouble(Minutia::y).max().orElse(0));
  }
}
