package ridgeproof.spec.limit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import ridgeproof.spec.table.Source;

class RidgeLimitTest {

  private static RidgeLimit limit(OptionalDouble least, OptionalDouble most, String unit) {
    Source source = new Source("DESIGN", "", Source.Knowledge.COMMON_PRACTICE);
    return new RidgeLimit("RP-RDG-001", "case", "rolled", "area", least, most, unit, source);
  }

  @Test
  void aValueThatEqualsABoundKeepsIt() {
    RidgeLimit least = limit(OptionalDouble.of(0.5), OptionalDouble.empty(), "ratio");
    assertFalse(least.isBrokenBy(0.5));
    assertTrue(least.isBrokenBy(Math.nextDown(0.5)));
    assertFalse(least.isBrokenBy(1e9));
    RidgeLimit most = limit(OptionalDouble.empty(), OptionalDouble.of(20), "degrees");
    assertFalse(most.isBrokenBy(20));
    assertTrue(most.isBrokenBy(Math.nextUp(20.0)));
    assertFalse(most.isBrokenBy(-1e9));
    RidgeLimit both = limit(OptionalDouble.of(1), OptionalDouble.of(2), "mm");
    assertTrue(both.isBrokenBy(0.9));
    assertFalse(both.isBrokenBy(1.5));
    assertTrue(both.isBrokenBy(2.1));
  }

  @Test
  void anAmountHasItsUnitAndAsManyDigitsAsHelp() {
    assertEquals("45 %", amount("share", 0.451));
    assertEquals("0.45", amount("ratio", 0.451));
    assertEquals("12", amount("ratio", 12.3));
    assertEquals("13", amount("count", 12.5001));
    assertEquals("9.99 mm", amount("mm", 9.99));
    assertEquals("10 mm", amount("mm", 10));
    assertEquals("-12 degrees", amount("degrees", -12));
  }

  private static String amount(String unit, double value) {
    return limit(OptionalDouble.empty(), OptionalDouble.empty(), unit).amount(value);
  }
}
