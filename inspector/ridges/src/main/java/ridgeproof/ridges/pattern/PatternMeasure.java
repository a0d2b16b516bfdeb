package ridgeproof.ridges.pattern;

import java.util.List;
import java.util.Optional;

/**
 * The pattern of a print by its singular points.
 *
 * @param pattern the class
 * @param confidence in the class, 0..1
 * @param points all cores and deltas
 * @param core the uppermost core along the finger
 * @param coreToBorderMm from the core to the nearest place without ridges or the image edge, mm; 0
 *     without a core
 */
public record PatternMeasure(
    PatternClass pattern,
    double confidence,
    List<SingularPoint> points,
    Optional<SingularPoint> core,
    double coreToBorderMm) {

  /** Classes after Henry as used by bureaus (common practice), as seen on the image. */
  public enum PatternClass {
    /** Ridges cross from side to side and rise in the middle. */
    ARCH,
    /** An arch with an upright core right above its delta. */
    TENTED_ARCH,
    /** Ridges enter and leave at the left. */
    LEFT_LOOP,
    /** Ridges enter and leave at the right. */
    RIGHT_LOOP,
    /** Ridges turn around full circle: plain, central pocket, double loop and accidental. */
    WHORL,
    /** Too little of the print to tell. */
    UNKNOWN
  }

  public PatternMeasure {
    points = List.copyOf(points);
  }
}
