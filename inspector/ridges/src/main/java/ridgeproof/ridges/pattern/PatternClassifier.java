package ridgeproof.ridges.pattern;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import ridgeproof.ridges.map.BlockGrid;
import ridgeproof.ridges.map.OrientationField;
import ridgeproof.ridges.map.RidgeMaps;
import ridgeproof.ridges.map.RidgeMask;
import ridgeproof.ridges.map.RidgeRegion;
import ridgeproof.ridges.map.Statistics;
import ridgeproof.ridges.map.WorkingResolution;
import ridgeproof.ridges.pattern.PatternMeasure.PatternClass;
import ridgeproof.ridges.pattern.SingularPoint.Kind;

/** Tells the pattern class from the number and places of cores and deltas (common practice). */
public final class PatternClassifier {

  /** Square millimetres without which nothing is said. */
  private static final double MIN_AREA = 90;

  /** Degrees off straight down within which a core stands upright. */
  private static final double UPRIGHT = 10;

  /** Degrees between the sides of an arch. */
  private static final double RISE = 15;

  private static final double SURELY_ASLANT = 35;

  private PatternClassifier() {}

  public static PatternMeasure classify(RidgeMaps maps, RidgeRegion region, double lean) {
    List<SingularPoint> points = SingularPoints.of(maps, region);
    List<SingularPoint> cores = kind(points, Kind.CORE);
    List<SingularPoint> deltas = kind(points, Kind.DELTA);
    double cos = Math.cos(Math.toRadians(lean));
    double sin = Math.sin(Math.toRadians(lean));
    Optional<SingularPoint> top =
        cores.stream().min(Comparator.comparingDouble(p -> p.y() * cos - p.x() * sin));
    double border = top.map(core -> borderMm(maps, region, core)).orElse(0.0);
    if (region.areaMm2() < MIN_AREA || cores.size() > 2 || deltas.size() > 2) {
      return new PatternMeasure(PatternClass.UNKNOWN, 0, points, top, border);
    }
    if (cores.size() == 2) {
      double confidence = deltas.size() == 2 ? 0.95 : deltas.size() == 1 ? 0.85 : 0.7;
      return new PatternMeasure(PatternClass.WHORL, confidence, points, top, border);
    }
    if (cores.size() == 1) {
      return deltas.size() == 2
          ? new PatternMeasure(PatternClass.WHORL, 0.6, points, top, border)
          : loop(points, top.orElseThrow(), deltas, lean, border);
    }
    boolean whole = region.areaMm2() > 2 * MIN_AREA;
    // Without a rise in the middle it may be another joint, or no skin at all.
    boolean rises =
        OrientationField.of(maps, region.mask(), 1).bend(region.left(), region.right()) > RISE;
    return deltas.isEmpty() && whole && rises
        ? new PatternMeasure(PatternClass.ARCH, 0.5, points, top, border)
        : new PatternMeasure(PatternClass.UNKNOWN, 0, points, top, border);
  }

  private static List<SingularPoint> kind(List<SingularPoint> points, Kind kind) {
    return points.stream().filter(point -> point.kind() == kind).toList();
  }

  private static PatternMeasure loop(
      List<SingularPoint> points,
      SingularPoint core,
      List<SingularPoint> deltas,
      double lean,
      double border) {
    // Degrees that the loop opens to the left of straight down along the finger.
    double aslant = Math.IEEEremainder(core.degrees() - lean - 90, 360);
    if (Math.abs(aslant) > 90) {
      // A core that opens upwards is the lower one of a whorl whose upper one was not found.
      return new PatternMeasure(PatternClass.WHORL, 0.4, points, Optional.of(core), border);
    }
    double confidence = 0.6 + 0.3 * Statistics.ramp(Math.abs(aslant), UPRIGHT, SURELY_ASLANT);
    if (!deltas.isEmpty()) {
      double across = acrossFromCore(core, deltas.get(0), lean);
      double below = belowCore(core, deltas.get(0), lean);
      if (Math.abs(aslant) < UPRIGHT && Math.abs(across) < 0.25 * Math.abs(below)) {
        return new PatternMeasure(PatternClass.TENTED_ARCH, 0.6, points, Optional.of(core), border);
      }
      boolean agrees = across > 0 == aslant > 0;
      boolean leftByDelta = across > 0;
      boolean left = Math.abs(aslant) < UPRIGHT ? leftByDelta : aslant > 0;
      confidence = agrees ? Math.min(0.95, confidence + 0.1) : confidence - 0.25;
      return new PatternMeasure(
          left ? PatternClass.LEFT_LOOP : PatternClass.RIGHT_LOOP,
          confidence,
          points,
          Optional.of(core),
          border);
    }
    return new PatternMeasure(
        aslant > 0 ? PatternClass.LEFT_LOOP : PatternClass.RIGHT_LOOP,
        confidence - 0.1,
        points,
        Optional.of(core),
        border);
  }

  private static double acrossFromCore(SingularPoint core, SingularPoint delta, double lean) {
    double angle = Math.toRadians(lean);
    return (delta.x() - core.x()) * Math.cos(angle) + (delta.y() - core.y()) * Math.sin(angle);
  }

  private static double belowCore(SingularPoint core, SingularPoint delta, double lean) {
    double angle = Math.toRadians(lean);
    return (delta.y() - core.y()) * Math.cos(angle) - (delta.x() - core.x()) * Math.sin(angle);
  }

  private static double borderMm(RidgeMaps maps, RidgeRegion region, SingularPoint core) {
    BlockGrid grid = maps.grid();
    boolean[] mask = RidgeMask.fillHoles(region.mask(), grid, grid.blocks());
    double x = core.x() * maps.scale();
    double y = core.y() * maps.scale();
    double nearest = Math.min(Math.min(x, grid.width() - x), Math.min(y, grid.height() - y));
    for (int row = 0; row < grid.rows(); row++) {
      for (int column = 0; column < grid.columns(); column++) {
        if (!mask[grid.index(column, row)]) {
          double dx = Math.max(0, Math.max(grid.left(column) - x, x - grid.right(column)));
          double dy = Math.max(0, Math.max(grid.top(row) - y, y - grid.bottom(row)));
          nearest = Math.min(nearest, Math.hypot(dx, dy));
        }
      }
    }
    return Math.max(0, nearest) * WorkingResolution.MM_PER_PIXEL;
  }
}
