package ridgeproof.ridges.matching;

import java.util.List;
import java.util.Set;
import ridgeproof.spec.layout.FingerPosition;

/**
 * Similarities of plain prints with rolls, of rolls with rolls and of plain prints with each other.
 */
final class SimilarityMatrix {

  private static final int FINGERS = FingerPosition.values().length;

  private final CardScores scores;
  private final List<FingerPosition> rolls;
  private final List<FingerPosition> plains;
  private final double[][] plainToRoll = new double[FINGERS][FINGERS];
  private final double[][] rollToRoll = new double[FINGERS][FINGERS];
  private final double[][] plainToPlain = new double[FINGERS][FINGERS];

  private SimilarityMatrix(CardScores scores) {
    this.scores = scores;
    rolls = scores.rolls().keySet().stream().sorted().toList();
    plains = scores.plains().keySet().stream().sorted().toList();
  }

  /** Compares the plain prints with all; the rolls among themselves are left for later. */
  static SimilarityMatrix of(CardScores scores) {
    SimilarityMatrix matrix = new SimilarityMatrix(scores);
    // Each probe writes its own rows only, so that the probes may run beside each other.
    matrix.plains.parallelStream().forEach(matrix::fillFromPlain);
    return matrix;
  }

  /** Compares plain prints with all rolls by second templates of the plain prints. */
  void lookAgainAtPlains(List<FingerPosition> open) {
    open.parallelStream().forEach(plain -> raise(plain, rolls, scores.ofPlainAgain(plain, rolls)));
  }

  /** Compares plain prints with rolls by second templates of these, which cost the most. */
  void lookAgainAtRolls(List<FingerPosition> open, List<FingerPosition> openRolls) {
    open.parallelStream()
        .forEach(plain -> raise(plain, openRolls, scores.ofRollsAgain(plain, openRolls)));
  }

  private void raise(FingerPosition plain, List<FingerPosition> with, double[] again) {
    double[] row = plainToRoll[plain.ordinal()];
    for (int i = 0; i < again.length; i++) {
      int roll = with.get(i).ordinal();
      row[roll] = Math.max(row[roll], again[i]);
    }
  }

  /**
   * Compares rolls with each other.
   *
   * @param settled rolls known by their own plain print and by no other: two of these are not of
   *     one finger, and to compare them would cost a third of the time of all
   */
  void compareRolls(Set<FingerPosition> settled) {
    rolls.stream().filter(roll -> !settled.contains(roll)).toList().parallelStream()
        .forEach(probe -> fillFromRoll(probe, settled));
  }

  private void fillFromRoll(FingerPosition probe, Set<FingerPosition> settled) {
    List<FingerPosition> others =
        rolls.stream().filter(roll -> settled.contains(roll) || roll.compareTo(probe) > 0).toList();
    store(scores.ofRoll(probe, others), 0, others, rollToRoll[probe.ordinal()]);
  }

  private void fillFromPlain(FingerPosition probe) {
    List<FingerPosition> others =
        plains.stream().filter(plain -> plain.compareTo(probe) > 0).toList();
    double[] found = scores.ofPlain(probe, rolls, others);
    store(found, 0, rolls, plainToRoll[probe.ordinal()]);
    store(found, rolls.size(), others, plainToPlain[probe.ordinal()]);
  }

  private static void store(
      double[] scores, int from, List<FingerPosition> positions, double[] row) {
    for (int i = 0; i < positions.size(); i++) {
      row[positions.get(i).ordinal()] = scores[from + i];
    }
  }

  List<FingerPosition> rolls() {
    return rolls;
  }

  List<FingerPosition> plains() {
    return plains;
  }

  double plainToRoll(FingerPosition plain, FingerPosition roll) {
    return plainToRoll[plain.ordinal()][roll.ordinal()];
  }

  double rolls(FingerPosition a, FingerPosition b) {
    return either(rollToRoll, a, b);
  }

  double plains(FingerPosition a, FingerPosition b) {
    return either(plainToPlain, a, b);
  }

  private static double either(double[][] scores, FingerPosition a, FingerPosition b) {
    return Math.max(scores[a.ordinal()][b.ordinal()], scores[b.ordinal()][a.ordinal()]);
  }
}
