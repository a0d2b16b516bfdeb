package ridgeproof.ridges.quality;

import ridgeproof.ridges.matching.Minutiae;
import ridgeproof.ridges.pattern.PatternMeasure;

/**
 * All that was measured of one print.
 *
 * @param extent how much there is
 * @param flow ridge flow and period
 * @param tone gray levels
 * @param clarity clarity of the ridges
 * @param smear ink without ridges
 * @param gap where it is parted
 * @param pattern cores, deltas and class
 * @param rotation lean of the finger
 * @param minutiae as extracted; their number for each square centimetre is {@link #minutiaDensity}
 * @param maps block by block, for drawing
 */
public record FingerMeasures(
    ExtentMeasure extent,
    FlowMeasure flow,
    ToneMeasure tone,
    ClarityMeasure clarity,
    SmearMeasure smear,
    GapMeasure gap,
    PatternMeasure pattern,
    RotationMeasure rotation,
    Minutiae minutiae,
    BlockMap maps) {

  private static final double MM2_PER_CM2 = 100;

  /** Minutiae for each square centimetre of the print. */
  public double minutiaDensity() {
    return extent.areaMm2() <= 0 ? 0 : minutiae.count() * MM2_PER_CM2 / extent.areaMm2();
  }
}
