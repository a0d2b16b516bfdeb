package ridgeproof.ridges.quality;

import java.util.List;
import java.util.Optional;

/**
 * What an image of one finger shows.
 *
 * @param doubts why there are no measures, or what makes them doubtful
 * @param measures of the print, when there is one
 * @param score with its parts; {@link QualityScore#NONE} without a print
 */
public record FingerAnalysis(
    List<Doubt> doubts, Optional<FingerMeasures> measures, QualityScore score) {

  /** What can be wrong. */
  public enum Doubt {
    /** The resolution is outside 240 to 4800 ppi, or the image is too large at it. */
    UNUSABLE_RESOLUTION,
    /** Nowhere in the image are there friction ridges over 20 mm2. */
    NO_RIDGES,
    /** Ridges over less than 60 mm2. */
    LITTLE_RIDGE_AREA,
    /** Light ridges on dark ground. */
    INVERTED_TONES,
    /** An image edge cuts the print over more than 2.5 mm. */
    CUT_BY_EDGE,
    /** No core was found. */
    NO_CORE,
    /** The ridge period is that of no adult finger at the resolution stated (0.3 to 0.75 mm). */
    UNUSUAL_PERIOD,
    /** The lean is a guess. */
    ROTATION_UNCERTAIN,
    /** Other prints of at least 60 mm2 are in the image; the largest was measured. */
    OTHER_PRINTS
  }

  public FingerAnalysis {
    doubts = List.copyOf(doubts);
  }

  /** An image without measures, and why. */
  static FingerAnalysis without(Doubt why) {
    return new FingerAnalysis(List.of(why), Optional.empty(), QualityScore.NONE);
  }
}
