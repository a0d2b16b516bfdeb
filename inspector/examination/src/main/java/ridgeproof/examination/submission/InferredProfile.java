package ridgeproof.examination.submission;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.Positions;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.SubmissionProfile;
import ridgeproof.spec.SubmissionProfile.NeededPrint;

/** Which submission a file is by the prints that it holds, where its type does not tell. */
public final class InferredProfile {

  /**
   * With fewer rolled fingers than this a file is a sample or a supplement, not a card with fingers
   * missing.
   */
  private static final int MIN_ROLLED = 6;

  private InferredProfile() {}

  public static Optional<SubmissionProfile> of(List<ExaminedImage> images, SpecTables tables) {
    Positions positions = new Positions(tables);
    Set<Integer> rolled = new TreeSet<>();
    Set<Integer> slaps = new TreeSet<>();
    boolean thumbs = false;
    for (ExaminedImage image : images) {
      boolean latent = positions.isTrace(image.impression());
      if (image.position().isEmpty() || latent) {
        continue;
      }
      int position = image.position().getAsInt();
      switch (positions.kind(position)) {
        case "rolled" -> rolled.add(position);
        case "slap" -> slaps.add(position);
        case "plain" -> thumbs = true;
        default -> {}
      }
    }
    if (rolled.size() >= MIN_ROLLED) {
      return withKind(tables, "rolled");
    }
    boolean bothHands = slaps.contains(13) && slaps.contains(14);
    boolean someThumb = slaps.contains(15) || thumbs;
    return rolled.isEmpty() && bothHands && someThumb
        ? withoutKind(tables, "rolled")
        : Optional.empty();
  }

  private static Optional<SubmissionProfile> withKind(SpecTables tables, String kind) {
    return tables.profiles().stream().filter(profile -> needs(profile, kind)).findFirst();
  }

  private static Optional<SubmissionProfile> withoutKind(SpecTables tables, String kind) {
    return tables.profiles().stream().filter(profile -> !needs(profile, kind)).findFirst();
  }

  static boolean needs(SubmissionProfile profile, String kind) {
    return profile.prints().stream().map(NeededPrint::kind).anyMatch(kind::equals);
  }
}
