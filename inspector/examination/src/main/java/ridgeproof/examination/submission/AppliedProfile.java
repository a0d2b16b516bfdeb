package ridgeproof.examination.submission;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.SubmissionProfile;
import ridgeproof.spec.SubmissionProfile.NeededPrint;
import ridgeproof.spec.agency.AgencyProfile;
import ridgeproof.spec.submission.TransactionNeed;
import ridgeproof.transaction.Transaction;

/**
 * The submission that a file is checked as.
 *
 * @param named whether the user named it; else the type of transaction or the contents imply it
 */
public record AppliedProfile(Optional<SubmissionProfile> profile, boolean named) {

  /** From so many rolled fingers on a file is a rolled card, whatever else it holds. */
  private static final int MIN_ROLLED = 6;

  public static AppliedProfile of(
      ExaminationOptions options,
      Transaction transaction,
      List<ExaminedImage> images,
      SpecTables tables) {
    Optional<SubmissionProfile> implied = implied(transaction, images, tables);
    if (options.agency().isPresent()) {
      AgencyProfile agency = options.agency().get();
      // An agency that lists prints of its own says itself what a set is.
      Optional<SubmissionProfile> base =
          agency.prints().isEmpty() ? implied : InferredProfile.of(images, tables);
      return new AppliedProfile(Optional.of(of(agency, options.profile().or(() -> base))), true);
    }
    return options.profile().isPresent()
        ? new AppliedProfile(options.profile(), true)
        : new AppliedProfile(implied, false);
  }

  /** Whether the prints that are needed are the user's choice, and no way of several. */
  public static boolean namesPrints(ExaminationOptions options) {
    return options.profile().isPresent()
        || options.agency().filter(agency -> !agency.prints().isEmpty()).isPresent();
  }

  /** By the type of transaction, and by what the file holds only where the type is unknown. */
  private static Optional<SubmissionProfile> implied(
      Transaction transaction, List<ExaminedImage> images, SpecTables tables) {
    Optional<TransactionNeed> need = new TransactionKind(transaction, tables).need();
    if (need.isEmpty()) {
      return InferredProfile.of(images, tables);
    }
    return need.get().kind() == TransactionNeed.Kind.TEN_FINGERS
        ? Optional.of(nearest(need.get(), new PrintSet(transaction, images, tables), tables))
        : Optional.empty();
  }

  /** The way of filling the set that the file comes closest to; the usual one where it has none. */
  private static SubmissionProfile nearest(TransactionNeed need, PrintSet set, SpecTables tables) {
    List<SubmissionProfile> ways =
        Stream.concat(need.ways().stream(), need.unusualWays().stream())
            .map(tables::profile)
            .toList();
    if (set.rolls() >= MIN_ROLLED) {
      Optional<SubmissionProfile> rolled =
          ways.stream().filter(way -> InferredProfile.needs(way, "rolled")).findFirst();
      if (rolled.isPresent()) {
        return rolled.get();
      }
    }
    SubmissionProfile nearest = ways.get(0);
    for (SubmissionProfile way : ways) {
      nearest = set.share(way) > set.share(nearest) ? way : nearest;
    }
    return nearest;
  }

  /** The agency's prints, besides those of the profile that was named or implied. */
  private static SubmissionProfile of(AgencyProfile agency, Optional<SubmissionProfile> base) {
    List<NeededPrint> prints = new ArrayList<>(agency.prints());
    if (!agency.hasBase()) {
      base.ifPresent(profile -> prints.addAll(0, profile.prints()));
    }
    return new SubmissionProfile(
        agency.name(), agency.title(), agency.title(), List.copyOf(prints), agency.source());
  }
}
