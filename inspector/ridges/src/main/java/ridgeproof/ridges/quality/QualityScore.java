package ridgeproof.ridges.quality;

import java.util.List;
import ridgeproof.ridges.matching.Minutiae;
import ridgeproof.ridges.pattern.PatternMeasure;

/**
 * How usable a print is, never without its parts.
 *
 * @param value 0 useless .. 100 as good as prints get: the weighted geometric mean of the parts, so
 *     that one bad part is not made up for by the others
 * @param parts what it is made of
 */
public record QualityScore(int value, List<Part> parts) {

  /**
   * One part.
   *
   * @param aspect what it judges
   * @param value 0..100
   * @param weight its weight in the mean, of the sum of all weights
   * @param measured the measure it was made from, in that measure's unit
   */
  public record Part(Aspect aspect, int value, double weight, double measured) {}

  /** What the parts judge. */
  public enum Aspect {
    /** {@link Minutiae#reliable}. */
    MINUTIAE,
    /** {@link ToneMeasure#ridgeShare}: wide where the finger was wet, narrow where it was dry. */
    MOISTURE,
    /** Area with clear ridges, mm2. */
    RIDGE_AREA,
    /** {@link ClarityMeasure#clarity}. */
    CLARITY,
    /** {@link FlowMeasure#periodMm}: narrow ridges leave more of their flow in a print. */
    RIDGE_DISTANCE,
    /** {@link PatternMeasure#coreToBorderMm}. */
    CORE,
    /** 1 for dark ridges, 0.8 unknown, 0 for inverted tones. */
    POLARITY
  }

  /** Of an image without a print. */
  public static final QualityScore NONE = new QualityScore(0, List.of());

  public QualityScore {
    parts = List.copyOf(parts);
  }
}
