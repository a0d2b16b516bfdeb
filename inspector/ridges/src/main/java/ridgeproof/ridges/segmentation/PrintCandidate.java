package ridgeproof.ridges.segmentation;

import ridgeproof.ridges.map.EdgeContact;
import ridgeproof.ridges.map.PrintShape;
import ridgeproof.ridges.map.RidgeMaps;
import ridgeproof.ridges.map.RidgeRegion;
import ridgeproof.ridges.map.WorkingResolution;

/**
 * A print that may be the distal print of a finger, seen along the common axis of the fingers.
 *
 * @param shape the blocks
 * @param left across the axis, working pixels, as the three that follow
 * @param right across the axis
 * @param tip along the axis, growing towards the base
 * @param base along the axis
 * @param cutAtTop whether the top edge of the image cuts it
 * @param cutAtSide whether another edge cuts it
 * @param cutFromPhalanx whether more of the finger lay below it
 */
record PrintCandidate(
    PrintShape shape,
    double left,
    double right,
    double tip,
    double base,
    boolean cutAtTop,
    boolean cutAtSide,
    boolean cutFromPhalanx) {

  /** Square millimetres of a flat distal print; a small one of an adult has as much. */
  private static final double FULL_AREA = 130;

  /** Millimetres across; what is broader is more likely two prints that touch. */
  private static final double BROAD = 21;

  static PrintCandidate of(
      RidgeMaps maps, RidgeRegion region, double axis, boolean cutFromPhalanx) {
    PrintShape shape = PrintShape.of(region);
    double[] span = shape.span(axis);
    EdgeContact edges = EdgeContact.of(maps, region);
    return new PrintCandidate(
        shape,
        span[0],
        span[1],
        span[2],
        span[3],
        edges.isCutAtTop(),
        edges.isCutAtSide() || edges.isCutAtBottom(),
        cutFromPhalanx);
  }

  double areaMm2() {
    return shape.region().areaMm2();
  }

  boolean isSmall() {
    return areaMm2() < FULL_AREA * 0.6;
  }

  /** Neither too little for a distal print nor, by its breadth or the edge, more than one. */
  boolean looksWhole() {
    boolean broad = width() * WorkingResolution.MM_PER_PIXEL > BROAD;
    return !isSmall() && !broad && !cutAtSide;
  }

  double middle() {
    return (left + right) / 2;
  }

  double width() {
    return right - left;
  }

  double length() {
    return base - tip;
  }

  /** How much it looks like a whole distal print, 0..1. */
  double merit() {
    double size = Math.min(1, areaMm2() / FULL_AREA);
    double breadth = Math.min(1, BROAD / Math.max(1, width() * WorkingResolution.MM_PER_PIXEL));
    return size * breadth * (cutAtTop ? 0.8 : 1) * (cutAtSide ? 0.5 : 1);
  }

  /** Share of the narrower breadth that two prints have in common across the axis, 0..1. */
  double overlap(PrintCandidate other) {
    double common = Math.min(right, other.right) - Math.max(left, other.left);
    return Math.max(0, common) / Math.min(width(), other.width());
  }
}
