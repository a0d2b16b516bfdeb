package ridgeproof.ridges.quality;

/**
 * How far a finger leans.
 *
 * @param degrees that the tip leans to the right (clockwise) from straight up
 * @param confidence 0..1; low for round prints and those that an edge cuts
 */
public record RotationMeasure(double degrees, double confidence) {}
