package ridgeproof.examination;

import java.util.Optional;
import ridgeproof.imagery.DecodingLimits;
import ridgeproof.spec.SubmissionProfile;

/**
 * How to examine.
 *
 * @param profile what the file is held to; empty to take what the file itself implies
 * @param threads how many images are decoded at once, at least 1
 */
public record ExaminationOptions(
    Depth depth, Optional<SubmissionProfile> profile, DecodingLimits imageLimits, int threads) {

  /** Everything there is, by what the file implies, over all cores. */
  public static ExaminationOptions standard() {
    return new ExaminationOptions(
        Depth.IMAGES,
        Optional.empty(),
        DecodingLimits.standard(),
        Runtime.getRuntime().availableProcessors());
  }

  public ExaminationOptions withDepth(Depth other) {
    return new ExaminationOptions(other, profile, imageLimits, threads);
  }

  public ExaminationOptions withProfile(SubmissionProfile other) {
    return new ExaminationOptions(depth, Optional.of(other), imageLimits, threads);
  }

  public ExaminationOptions withImageLimits(DecodingLimits other) {
    return new ExaminationOptions(depth, profile, other, threads);
  }
}
