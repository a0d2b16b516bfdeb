package ridgeproof.ledger.health;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ChangePointTest {

  @Test
  void equalValuesShareTheirRanks() {
    assertArrayEquals(
        new double[] {1, 2.5, 4, 2.5}, ChangePoint.ranks(new double[] {1, 3, 7, 3}), 0);
  }

  @Test
  void aJumpIsFoundWhereItIs() {
    Random random = new Random(1);
    double[] values = new double[200];
    for (int i = 0; i < values.length; i++) {
      values[i] = random.nextGaussian() + (i >= 80 ? 3 : 0);
    }
    ChangePoint point = ChangePoint.of(values).orElseThrow();
    assertEquals(80, point.at(), 2);
    assertEquals(3, point.after() - point.before(), 0.5);
    assertTrue(point.probability() < 1e-9);
  }

  @Test
  void withoutAChangeTheProbabilityKeepsItsPromise() {
    Random random = new Random(2);
    int below = 0;
    int series = 2000;
    for (int s = 0; s < series; s++) {
      double[] values = random.doubles(120).toArray();
      below += ChangePoint.of(values).orElseThrow().probability() <= 0.05 ? 1 : 0;
    }
    assertTrue(below <= 0.05 * series, below + " of " + series);
  }

  @Test
  void fewValuesTellNothing() {
    assertEquals(Optional.empty(), ChangePoint.of(new double[2 * ChangePoint.MIN_SIDE - 1]));
  }
}
