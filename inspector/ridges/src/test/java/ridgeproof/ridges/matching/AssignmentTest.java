package ridgeproof.ridges.matching;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

class AssignmentTest {

  @Test
  void theGreatestSumIsFoundAsByTryingAll() {
    Random random = new Random(5);
    for (int round = 0; round < 200; round++) {
      double[][] values = new double[4][4 + random.nextInt(3)];
      for (double[] row : values) {
        for (int i = 0; i < row.length; i++) {
          row[i] = random.nextGaussian();
        }
      }
      assertEquals(byTryingAll(values, 0, new boolean[values[0].length]), value(values), 1e-9);
    }
  }

  private static double value(double[][] values) {
    Assignment best = Assignment.best(values);
    double sum = 0;
    for (int i = 0; i < values.length; i++) {
      sum += values[i][best.columns()[i]];
    }
    assertEquals(sum, best.value(), 1e-9);
    assertEquals(values.length, Arrays.stream(best.columns()).distinct().count());
    return best.value();
  }

  private static double byTryingAll(double[][] values, int row, boolean[] used) {
    if (row == values.length) {
      return 0;
    }
    double best = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < used.length; i++) {
      if (!used[i]) {
        used[i] = true;
        best = Math.max(best, values[row][i] + byTryingAll(values, row + 1, used));
        used[i] = false;
      }
    }
    return best;
  }

  @Test
  void whatIsForbiddenIsLeftWhereThereIsAnotherWay() {
    double[][] values = {{Assignment.FORBIDDEN, 1}, {5, 4}};
    assertArrayEquals(new int[] {1, 0}, Assignment.best(values).columns());
  }

  @Test
  void nothingIsAssignedOfNothing() {
    assertEquals(0, Assignment.best(new double[0][]).value());
  }
}
