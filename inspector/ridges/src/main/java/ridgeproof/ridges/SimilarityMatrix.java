package ridgeproof.ridges;

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
                matrix.fill(plains.get(probe), probe, rolls, matrix.plainToRoll, -1);
                matrix.fill(plains.get(probe), probe, plains, matrix.plainToPlain, probe.ordinal());
              }
              if (rolls.containsKey(probe)) {
                matrix.fill(rolls.get(probe), probe, rolls, matrix.rollToRoll, probe.ordinal());
              }
            });
    return matrix;
  }

  private void fill(
      Minutiae probe,
      FingerPosition row,
      Map<FingerPosition, Minutiae> others,
      double[][] target,
      int after) {
    List<FingerPosition> columns =
        Arrays.stream(FingerPosition.values())
            .filter(position -> position.ordinal() > after && others.containsKey(position))
            .toList();
    double[] scores = probe.similarities(columns.stream().map(others::get).toList());
    for (int i = 0; i < scores.length; i++) {
      target[row.ordinal()][columns.get(i).ordinal()] = scores[i];
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
