package ridgeproof.ridges.matching;

import java.util.Arrays;

/**
 * What a similarity weighs: the power of ten by which it is likelier between prints of one finger
 * than of two.
 */
public final class MatchEvidence {

  private final double[] similarities;
  private final double[] weights;

  /**
   * @param similarities in rising order
   * @param weights of each, none less than the one before; in between they are interpolated, beyond
   *     the last they stay
   */
  public MatchEvidence(double[] similarities, double[] weights) {
    if (similarities.length == 0 || similarities.length != weights.length) {
      throw new IllegalArgumentException("as many weights as similarities, at least one");
    }
    this.similarities = similarities.clone();
    this.weights = weights.clone();
  }

  /** The weight of a similarity. */
  public double weight(double similarity) {
    int at = Arrays.binarySearch(similarities, similarity);
    int above = at >= 0 ? at : -at - 1;
    if (above == 0) {
      return weights[0];
    }
    if (above == similarities.length) {
      return weights[above - 1];
    }
    double step = similarities[above] - similarities[above - 1];
    double share = (similarity - similarities[above - 1]) / step;
    return weights[above - 1] + share * (weights[above] - weights[above - 1]);
  }
}
