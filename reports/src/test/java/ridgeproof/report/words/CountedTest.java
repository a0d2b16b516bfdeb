package ridgeproof.report.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class CountedTest {

  @Test
  void aNumberAgreesWithItsNoun() {
    assertEquals("0 files", Counted.of(0, "file"));
    assertEquals("1 file", Counted.of(1, "file"));
    assertEquals("2 files", Counted.of(2, "file"));
    assertEquals("1 entry", Counted.of(1, "entry", "entries"));
    assertEquals("21 entries", Counted.of(21, "entry", "entries"));
  }

  @Test
  void thousandsAreSeparated() {
    assertEquals("1,234,567 bytes", Counted.of(1_234_567, "byte"));
    assertEquals("4,294,967,296 bytes", Counted.of(4_294_967_296L, "byte"));
  }
}
