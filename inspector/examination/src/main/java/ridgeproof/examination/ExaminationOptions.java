package ridgeproof.examination;

import java.util.Optional;
import ridgeproof.imagery.DecodingLimits;
import ridgeproof.spec.SubmissionProfile;

/**
 * How to examine.
 *
 * @param profile what the file is held to; empty to take what the file itself implies
 * @param threads how many images are decoded at once, at least 1
 * @param secondDecoder whether WSQ images are decoded by another decoder too, and compared
 */
public record ExaminationOptions(
    Depth depth,
    Optional<SubmissionProfile> profile,
    DecodingLimits imageLimits,
    int threads,
    boolean secondDecoder) {

  /** Everything there is, by what the file implies, over all cores. */
  public static ExaminationOptions standard() {
    return new ExaminationOptions(
        Depth.IMAGES,
        Optional.empty(),
        DecodingLimits.standard(),
        Runtime.getRuntime().availableProcessors(),
        false);
  }

  public ExaminationOptions withDepth(Depth other) {
    return new ExaminationOptions(other, profile, imageLimits, threads, secondDecoder);
  }

  public ExaminationOptions withProfile(SubmissionProfile other) {
    return new ExaminationOptions(depth, Optional.of(other), imageLimits, threads, secondDecoder);
  }

  public ExaminationOptions withImageLimits(DecodingLimits other) {
    return new ExaminationOptions(depth, profile, other, threads, secondDecoder);
  }

  public ExaminationOptions withSecondDecoder(boolean wanted) {
    return new ExaminationOptions(depth, profile, imageLimits, threads, wanted);
  }
}
