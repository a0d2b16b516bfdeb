package ridgeproof.examination;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.SubmissionProfile;
import ridgeproof.spec.SubmissionProfile.NeededPrint;
import ridgeproof.spec.agency.AgencyProfile;

/**
 * The submission that a file is held to.
 *
 * @param named whether the user named it; else the file implied it
 */
record HeldTo(Optional<SubmissionProfile> profile, boolean named) {

  static HeldTo of(ExaminationOptions options, List<ExaminedImage> images, SpecTables tables) {
    if (options.agency().isPresent()) {
      return new HeldTo(Optional.of(of(options.agency().get(), options, images, tables)), true);
    }
    return options.profile().isPresent()
        ? new HeldTo(options.profile(), true)
        : new HeldTo(ImpliedProfile.of(images, tables), false);
  }

  /** The agency's prints, besides those of the profile that was named or implied. */
  private static SubmissionProfile of(
      AgencyProfile agency,
      ExaminationOptions options,
      List<ExaminedImage> images,
      SpecTables tables) {
    List<NeededPrint> prints = new ArrayList<>(agency.prints());
    if (!agency.hasBase()) {
      options
          .profile()
          .or(() -> ImpliedProfile.of(images, tables))
          .ifPresent(base -> prints.addAll(0, base.prints()));
    }
    return new SubmissionProfile(
        agency.name(), agency.title(), agency.title(), List.copyOf(prints), agency.source());
  }
}
