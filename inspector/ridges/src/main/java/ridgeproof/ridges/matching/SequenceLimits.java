package ridgeproof.ridges.matching;

/**
 * What a sequence check decides by. All but the similarities are powers of ten.
 *
 * @param threshold similarity that counts as a match by itself
 * @param usual the threshold that the evidence was fitted for; with a higher one every similarity
 *     weighs less in the same proportion, with a lower one none weighs more
 * @param evidence what similarities weigh
 * @param placePrior odds that a print is in the box of its finger, before it is looked at
 * @param strangerPrior odds against a print that is of no finger of the card
 * @param claim odds from which on a print is called another finger's
 * @param claimAlone the same where no second print bears it out
 * @param confirmed evidence for the own box from which on a finger is confirmed
 * @param lead similarity by which its roll must lead where that is below the threshold
 */
public record SequenceLimits(
    double threshold,
    double usual,
    MatchEvidence evidence,
    double placePrior,
    double strangerPrior,
    double claim,
    double claimAlone,
    double confirmed,
    double lead) {

  double weight(double similarity) {
    return evidence.weight(similarity * usual / careful());
  }

  /** The threshold for what speaks against a finger: a lower one only lets more be confirmed. */
  double careful() {
    return Math.max(threshold, usual);
  }

  /** The lead by the scale of the threshold. */
  double scaledLead() {
    return lead * threshold / usual;
  }

  /** The same with another threshold. */
  public SequenceLimits withThreshold(double other) {
    return new SequenceLimits(
        other, usual, evidence, placePrior, strangerPrior, claim, claimAlone, confirmed, lead);
  }

  /** The same with other odds from which on a print is called another finger's. */
  public SequenceLimits withClaim(double other) {
    return new SequenceLimits(
        threshold, usual, evidence, placePrior, strangerPrior, other, claimAlone, confirmed, lead);
  }
}
