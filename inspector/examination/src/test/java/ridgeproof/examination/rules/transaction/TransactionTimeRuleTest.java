package ridgeproof.examination.rules.transaction;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static ridgeproof.examination.SampleRecords.found;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ridgeproof.examination.SampleCard;

/** The sample card is of 2 March 2026. */
class TransactionTimeRuleTest {

  private static final String RULE = "RP-TXN-063";

  private static SampleCard greenwich(String day) {
    return SampleCard.rolled().with(1, draft -> draft.with(14, day + "101500Z"));
  }

  @ParameterizedTest
  @CsvSource({"20260304, 2026-03-04", "20250301, 2025-03-01"})
  void greenwichIsAtMostADayAheadAndAYearBehind(String day, String observed) {
    assertEquals(
        List.of(
            "RP-TXN-063 record 1 field 1.014: "
                + observed
                + " GMT; no later than 2026-03-02, field 1.005, and at most a year before it"),
        found(greenwich(day), RULE));
  }

  @ParameterizedTest
  @CsvSource({"20260303", "20260302", "20260301", "20250302"})
  void whatLiesBetweenIsPossible(String day) {
    assertEquals(List.of(), found(greenwich(day), RULE));
  }

  @Test
  void withoutOneOfTheTwoNothingIsCompared() {
    SampleCard later = greenwich("20260401");
    assertEquals(1, found(later, RULE).size());
    assertEquals(List.of(), found(later.with(1, draft -> draft.without(5)), RULE));
    assertEquals(List.of(), found(later.with(1, draft -> draft.without(14)), RULE));
  }
}
