package ridgeproof.examination.rules.ridges;

import java.util.List;
import ridgeproof.ridges.matching.MatchEvidence;
import ridgeproof.ridges.matching.SequenceLimits;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.limit.MatchLikelihood;
import ridgeproof.spec.limit.PixelLimits;

/** What the tables say of the comparison of prints. */
public final class MatchLimits {

  private MatchLimits() {}

  /** By the usual similarity. */
  public static SequenceLimits usual(SpecTables tables) {
    return of(tables, tables.matchLikelihoods());
  }

  /** With other likelihoods than those of the tables. */
  public static SequenceLimits of(SpecTables tables, List<MatchLikelihood> likelihoods) {
    PixelLimits limits = tables.pixelLimits();
    double threshold = limits.value("finger-match");
    return new SequenceLimits(
        threshold,
        threshold,
        new MatchEvidence(
            likelihoods.stream().mapToDouble(MatchLikelihood::similarity).toArray(),
            likelihoods.stream().mapToDouble(MatchLikelihood::weight).toArray()),
        limits.value("place-prior"),
        limits.value("stranger-prior"),
        limits.value("place-claim"),
        limits.value("place-claim-alone"),
        limits.value("place-confirmed"),
        limits.value("place-lead"));
  }
}
