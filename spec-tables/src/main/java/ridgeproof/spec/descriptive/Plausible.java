package ridgeproof.spec.descriptive;

import ridgeproof.spec.table.Source;

/**
 * What is to be expected of a measure of a person or a submission.
 *
 * @param kind kind of transaction for which it holds; empty for every kind
 */
public record Plausible(
    String measure, String kind, double least, double most, String unit, Source source) {

  public boolean holds(double value) {
    return value >= least && value <= most;
  }
}
