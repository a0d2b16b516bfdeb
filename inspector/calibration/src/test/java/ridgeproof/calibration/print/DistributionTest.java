package ridgeproof.calibration.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

class DistributionTest {

  private static final Distribution FIVE = Distribution.of(DoubleStream.of(5, 1, 4, 2, 3));

  @Test
  void quantilesLieBetweenNeighboursByTheirDistance() {
    assertEquals(1, FIVE.quantile(0));
    assertEquals(3, FIVE.quantile(0.5));
    assertEquals(4.5, FIVE.quantile(0.875), 1e-12);
    assertEquals(5, FIVE.quantile(1));
  }

  @Test
  void theDeviationIsThatOfASample() {
    assertEquals(3, FIVE.mean());
    assertEquals(Math.sqrt(2.5), FIVE.deviation(), 1e-12);
  }

  @Test
  void aLimitBelongsToTheUpperPart() {
    assertEquals(0.4, FIVE.shareFrom(4), 1e-12);
    assertEquals(2, FIVE.countWithin(2, 4));
  }

  @Test
  void nothingHasNoSpread() {
    Distribution none = Distribution.of(DoubleStream.empty());
    assertTrue(none.isEmpty());
    assertEquals(0, none.mean());
    assertEquals(0, none.deviation());
    assertEquals(0, none.quantile(0.5));
    assertEquals(0, none.shareFrom(1));
  }
}
