package ridgeproof.calibration.real;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import ridgeproof.ridges.matching.CardScores;
import ridgeproof.spec.layout.FingerPosition;

/** A card put together of prints whose similarities are known. */
final class ComposedScores implements CardScores {

  private final PrintPool pool;
  private final Map<FingerPosition, Integer> rollPrints;
  private final Map<FingerPosition, Integer> plainPrints;

  /**
   * @param rollPrints which print of the pool is in the box of each finger as its roll
   * @param plainPrints the same for the plain prints
   */
  ComposedScores(
      PrintPool pool,
      Map<FingerPosition, Integer> rollPrints,
      Map<FingerPosition, Integer> plainPrints) {
    this.pool = pool;
    this.rollPrints = rollPrints;
    this.plainPrints = plainPrints;
  }

  @Override
  public Map<FingerPosition, Integer> rolls() {
    return counts(rollPrints);
  }

  @Override
  public Map<FingerPosition, Integer> plains() {
    return counts(plainPrints);
  }

  private Map<FingerPosition, Integer> counts(Map<FingerPosition, Integer> prints) {
    Map<FingerPosition, Integer> counts = new EnumMap<>(FingerPosition.class);
    prints.forEach((finger, print) -> counts.put(finger, pool.minutiae()[print]));
    return counts;
  }

  @Override
  public double[] ofPlain(
      FingerPosition plain, List<FingerPosition> rolls, List<FingerPosition> otherPlains) {
    double[] scores = new double[rolls.size() + otherPlains.size()];
    double[] row = pool.first()[plainPrints.get(plain)];
    for (int i = 0; i < rolls.size(); i++) {
      scores[i] = row[rollPrints.get(rolls.get(i))];
    }
    for (int i = 0; i < otherPlains.size(); i++) {
      scores[rolls.size() + i] = row[plainPrints.get(otherPlains.get(i))];
    }
    return scores;
  }

  @Override
  public double[] ofRoll(FingerPosition roll, List<FingerPosition> others) {
    double[] row = pool.first()[rollPrints.get(roll)];
    return others.stream().mapToDouble(other -> row[rollPrints.get(other)]).toArray();
  }

  @Override
  public double[] ofPlainAgain(FingerPosition plain, List<FingerPosition> rolls) {
    return of(pool.plainAgain(), plain, rolls);
  }

  @Override
  public double[] ofRollsAgain(FingerPosition plain, List<FingerPosition> rolls) {
    return of(pool.rollAgain(), plain, rolls);
  }

  private double[] of(double[][] scores, FingerPosition plain, List<FingerPosition> rolls) {
    double[] row = scores[plainPrints.get(plain)];
    return rolls.stream().mapToDouble(roll -> row[rollPrints.get(roll)]).toArray();
  }
}
