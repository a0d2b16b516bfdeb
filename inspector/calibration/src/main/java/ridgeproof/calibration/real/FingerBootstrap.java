package ridgeproof.calibration.real;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * Between which rank correlations 95 of 100 sets of as many fingers lie: fingers are drawn again
 * with replacement (Efron 1979), since impressions of one finger are not independent.
 */
final class FingerBootstrap {

  private static final int DRAWS = 2000;
  private static final long SEED = 1;
  private static final double TAIL = 0.025;

  private FingerBootstrap() {}

  /** The lower and the upper end. */
  static double[] interval(int[] fingers, double[] one, double[] other) {
    Map<Integer, List<Integer>> prints = new TreeMap<>();
    IntStream.range(0, fingers.length)
        .forEach(i -> prints.computeIfAbsent(fingers[i], f -> new ArrayList<>()).add(i));
    List<List<Integer>> groups = List.copyOf(prints.values());
    Random dice = new Random(SEED);
    double[] found = new double[DRAWS];
    for (int draw = 0; draw < DRAWS; draw++) {
      int[] drawn =
          IntStream.range(0, groups.size())
              .mapToObj(i -> groups.get(dice.nextInt(groups.size())))
              .flatMap(List::stream)
              .mapToInt(Integer::intValue)
              .toArray();
      found[draw] =
          RankCorrelation.of(
              Arrays.stream(drawn).mapToDouble(i -> one[i]).toArray(),
              Arrays.stream(drawn).mapToDouble(i -> other[i]).toArray());
    }
    Arrays.sort(found);
    return new double[] {found[(int) (TAIL * DRAWS)], found[(int) ((1 - TAIL) * DRAWS) - 1]};
  }
}
