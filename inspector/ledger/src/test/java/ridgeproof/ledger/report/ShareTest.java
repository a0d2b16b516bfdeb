package ridgeproof.ledger.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class ShareTest {

  @Test
  void theIntervalIsThatOfWilson() {
    assertEquals(0.3315, new Share(15, 30).interval().low(), 5e-4);
    assertEquals(0.6685, new Share(15, 30).interval().high(), 5e-4);
    assertEquals(0, new Share(0, 10).interval().low(), 1e-9);
    assertEquals(0.2775, new Share(0, 10).interval().high(), 5e-4);
    assertEquals(0.7225, new Share(10, 10).interval().low(), 5e-4);
    assertEquals(new Share.Interval(0, 1), new Share(0, 0).interval());
  }

  @Test
  void fewerThanTenCasesGetNoPercentage() {
    assertEquals("3 of 9 (fewer than 10 cases, no percentage)", new Share(3, 9).words());
    assertEquals("5 of 10: 50 % (24 to 76 %)", new Share(5, 10).words());
  }
}
