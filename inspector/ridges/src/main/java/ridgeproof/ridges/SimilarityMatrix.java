package ridgeproof.ridges;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Similarities of plain prints with rolls, of rolls with rolls and of plain prints with each other.
 */
final class SimilarityMatrix {

  private static final int FINGERS = FingerPosition.values().length;

  private final Map<FingerPosition, Minutiae> rolls;
  private final Map<FingerPosition, Minutiae> plains;
  private final double[][] plainToRoll = new double[FINGERS][FINGERS];
  private final double[][] rollToRoll = new double[FINGERS][FINGERS];
  private final double[][] plainToPlain = new double[FINGERS][FINGERS];

  private SimilarityMatrix(
      Map<FingerPosition, Minutiae> rolls, Map<FingerPosition, Minutiae> plains) {
    this.rolls = rolls;
    this.plains = plains;
  }

  /** Compares the plain prints with all; the rolls among themselves are left for later. */
  static SimilarityMatrix of(
      Map<FingerPosition, Minutiae> rolls, Map<FingerPosition, Minutiae> plains) {
    SimilarityMatrix matrix = new SimilarityMatrix(rolls, plains);
    // Each probe writes its own rows only, so that the probes may run beside each other.
    List.copyOf(plains.keySet()).parallelStream().forEach(matrix::fillFromPlain);
    return matrix;
  }

  /**
   * Compares rolls with each other.
   *
   * @param settled rolls known by their own plain print and by no other: two of these are not of
   *     one finger, and to compare them would cost a third of the time of all
   */
  void compareRolls(Set<FingerPosition> settled) {
    rolls.keySet().stream().filter(roll -> !settled.contains(roll)).toList().parallelStream()
        .forEach(probe -> fillFromRoll(probe, settled));
  }

  private void fillFromRoll(FingerPosition probe, Set<FingerPosition> settled) {
    List<FingerPosition> others =
        rolls.keySet().stream()
            .filter(roll -> settled.contains(roll) || roll.compareTo(probe) > 0)
            .toList();
    double[] scores = rolls.get(probe).similarities(others.stream().map(rolls::get).toList());
    store(scores, 0, others, rollToRoll[probe.ordinal()]);
  }

  /** Rolls and plain prints go through one matcher, since making it is half the work. */
  private void fillFromPlain(FingerPosition probe) {
    List<FingerPosition> allRolls = List.copyOf(rolls.keySet());
    List<FingerPosition> otherPlains =
        plains.keySet().stream().filter(plain -> plain.compareTo(probe) > 0).toList();
    List<Minutiae> candidates = new ArrayList<>();
    allRolls.forEach(position -> candidates.add(rolls.get(position)));
    otherPlains.forEach(position -> candidates.add(plains.get(position)));
    double[] scores = plains.get(probe).similarities(candidates);
    store(scores, 0, allRolls, plainToRoll[probe.ordinal()]);
    store(scores, allRolls.size(), otherPlains, plainToPlain[probe.ordinal()]);
  }

  private static void store(
      double[] scores, int from, List<FingerPosition> positions, double[] row) {
    for (int i = 0; i < positions.size(); i++) {
      row[positions.get(i).ordinal()] = scores[from + i];
    }
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
