package ridgeproof.examination.facts;

import java.util.List;
import java.util.Optional;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.SubmissionProfile;
import ridgeproof.transaction.Transaction;

/**
 * What the rules look at.
 *
 * @param images every image record, in the order of the file
 * @param profile what the file is held to; empty where nothing was named and the file implies
 *     nothing
 * @param profileNamed whether the user named the profile
 * @param options how it is examined
 * @param sequence whether the prints are each other's; empty where none were compared
 */
public record ExaminationInput(
    Transaction transaction,
    SpecTables tables,
    Depth depth,
    List<ExaminedImage> images,
    Optional<SubmissionProfile> profile,
    boolean profileNamed,
    ExaminationOptions options,
    Optional<SequenceComparison> sequence) {

  /** Whether the ridges of any image were looked at. */
  public boolean hasRidges() {
    return images.stream().anyMatch(image -> image.ridges().isPresent());
  }

  /** The images that show fingers, palms or soles. */
  public List<ExaminedImage> prints() {
    return images.stream().filter(image -> image.layout().frictionRidge()).toList();
  }
}
