package ridgeproof.ridges;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/**
 * Similarities of plain prints with rolls, of rolls with rolls and of plain prints with each other.
 */
final class SimilarityMatrix {

  private static final int FINGERS = FingerPosition.values().length;

  private final double[][] plainToRoll = new double[FINGERS][FINGERS];
  private final double[][] rollToRoll = new double[FINGERS][FINGERS];
  private final double[][] plainToPlain = new double[FINGERS][FINGERS];

  private SimilarityMatrix() {}

  static SimilarityMatrix of(
      Map<FingerPosition, Minutiae> rolls, Map<FingerPosition, Minutiae> plains) {
    SimilarityMatrix matrix = new SimilarityMatrix();
    // Each probe writes its own rows only, so that the probes may run beside each other.
    Arrays.stream(FingerPosition.values())
        .parallel()
        .forEach(
            probe -> {
              if (plains.containsKey(probe)) {
                matrix.fillFromPlain(probe, rolls, plains);
              }
              if (rolls.containsKey(probe)) {
                List<FingerPosition> others = after(probe, rolls);
                double[] scores = scores(rolls.get(probe), others, rolls);
                store(scores, 0, others, matrix.rollToRoll[probe.ordinal()]);
              }
            });
    return matrix;
  }

  /** Rolls and plain prints go through one matcher, since making it is half the work. */
  private void fillFromPlain(
      FingerPosition probe,
      Map<FingerPosition, Minutiae> rolls,
      Map<FingerPosition, Minutiae> plains) {
    List<FingerPosition> allRolls = List.copyOf(rolls.keySet());
    List<FingerPosition> otherPlains = after(probe, plains);
    List<Minutiae> candidates = new ArrayList<>();
    allRolls.forEach(position -> candidates.add(rolls.get(position)));
    otherPlains.forEach(position -> candidates.add(plains.get(position)));
    double[] scores = plains.get(probe).similarities(candidates);
    store(scores, 0, allRolls, plainToRoll[probe.ordinal()]);
    store(scores, allRolls.size(), otherPlains, plainToPlain[probe.ordinal()]);
  }

  private static List<FingerPosition> after(
      FingerPosition probe, Map<FingerPosition, Minutiae> prints) {
    return prints.keySet().stream().filter(position -> position.compareTo(probe) > 0).toList();
  }

  private static double[] scores(
      Minutiae probe, List<FingerPosition> positions, Map<FingerPosition, Minutiae> prints) {
    return probe.similarities(positions.stream().map(prints::get).toList());
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
