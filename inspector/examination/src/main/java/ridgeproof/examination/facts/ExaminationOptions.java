package ridgeproof.examination.facts;

import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import ridgeproof.imagery.DecodingLimits;
import ridgeproof.spec.SubmissionProfile;
import ridgeproof.spec.agency.AgencyProfile;

/**
 * How to examine.
 *
 * @param profile what the file is held to; empty to take what the file itself implies
 * @param agency what the receiving agency asks for beyond the published documents
 * @param today the day of the examination, which no date of the file may follow
 * @param threads how many images are decoded at once, at least 1
 * @param secondDecoder whether WSQ images are decoded by another decoder too, and compared
 * @param platen whether the platen beside the prints is measured
 */
public record ExaminationOptions(
    Depth depth,
    Optional<SubmissionProfile> profile,
    Optional<AgencyProfile> agency,
    LocalDate today,
    DecodingLimits imageLimits,
    int threads,
    boolean secondDecoder,
    boolean platen) {

  /** Everything there is, by what the file implies, by the day in UTC, over all cores. */
  public static ExaminationOptions standard() {
    return new ExaminationOptions(
        Depth.RIDGES,
        Optional.empty(),
        Optional.empty(),
        LocalDate.now(Clock.systemUTC()),
        DecodingLimits.standard(),
        Runtime.getRuntime().availableProcessors(),
        false,
        false);
  }

  public ExaminationOptions withDepth(Depth other) {
    return new ExaminationOptions(
        other, profile, agency, today, imageLimits, threads, secondDecoder, platen);
  }

  public ExaminationOptions withProfile(SubmissionProfile other) {
    return new ExaminationOptions(
        depth, Optional.of(other), agency, today, imageLimits, threads, secondDecoder, platen);
  }

  /** Holds the file to an agency's profile, and to its prints where it names any. */
  public ExaminationOptions withAgency(AgencyProfile other) {
    return new ExaminationOptions(
        depth, profile, Optional.of(other), today, imageLimits, threads, secondDecoder, platen);
  }

  public ExaminationOptions withToday(LocalDate other) {
    return new ExaminationOptions(
        depth, profile, agency, other, imageLimits, threads, secondDecoder, platen);
  }

  public ExaminationOptions withImageLimits(DecodingLimits other) {
    return new ExaminationOptions(
        depth, profile, agency, today, other, threads, secondDecoder, platen);
  }

  public ExaminationOptions withSecondDecoder(boolean wanted) {
    return new ExaminationOptions(
        depth, profile, agency, today, imageLimits, threads, wanted, platen);
  }

  public ExaminationOptions withPlaten(boolean wanted) {
    return new ExaminationOptions(
        depth, profile, agency, today, imageLimits, threads, secondDecoder, wanted);
  }
}
