package ridgeproof.report.summary;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ridgeproof.examination.Verdict;

/** How many files there were day by day, and how many of them were READY. */
class TrendTest {

  private static FolderSummary.FileRow file(String day, Verdict verdict) {
    return new FolderSummary.FileRow(
        "card.an2",
        verdict,
        List.of(0, 0, 0, 0),
        "card.html",
        Optional.of(day).filter(text -> !text.isEmpty()).map(LocalDate::parse),
        OptionalInt.empty(),
        List.of());
  }

  private static Trend ready(String... days) {
    return Trend.of(Stream.of(days).map(day -> file(day, Verdict.READY)).toList());
  }

  private static List<String> labels(Trend trend) {
    return trend.bars().stream().map(bar -> bar.key() + " " + bar.label()).toList();
  }

  @Test
  void filesAreCountedByTheirDay() {
    Trend trend =
        Trend.of(
            List.of(
                file("2026-03-02", Verdict.HOLD),
                file("2026-02-28", Verdict.READY),
                file("2026-03-02", Verdict.READY),
                file("", Verdict.READY),
                file("2026-03-02", Verdict.REVIEW)));
    assertEquals(
        new Trend(
            "day",
            3,
            List.of(
                new Trend.Bar("d20260228", "2026-02-28", 1, 1, 0, 298),
                new Trend.Bar("d20260302", "2026-03-02", 3, 1, 300, 298))),
        trend);
    assertEquals("100 %", trend.bars().get(0).percent());
    assertEquals("33 %", trend.bars().get(1).percent());
    assertTrue(trend.hasSeveralBars());
  }

  @Test
  void theShareOfABarIsThatOfItsReadyFiles() {
    assertEquals("67 %", new Trend.Bar("", "", 3, 2, 0, 0).percent());
    assertEquals("0 %", new Trend.Bar("", "", 3, 0, 0, 0).percent());
  }

  @Test
  void filesWithoutADayOrOfOneDayHaveNoTrend() {
    assertEquals(new Trend("day", 0, List.of()), ready(""));
    assertFalse(ready("").hasSeveralBars());
    assertFalse(ready("2026-01-01", "2026-01-01").hasSeveralBars());
  }

  /** From the first day to the last: 39 days, 40 days, 279 days, 280 days. */
  @ParameterizedTest
  @CsvSource({
    "2026-02-09, day, d20260101 2026-01-01",
    "2026-02-10, week, d20251229 2025-12-29",
    "2026-10-07, week, d20251229 2025-12-29",
    "2026-10-08, month, d20260101 2026-01",
  })
  void aLongTimeIsCountedByWeeksOrMonths(String last, String step, String bar) {
    Trend trend = ready("2026-01-01", last);
    assertEquals(step, trend.step());
    assertEquals(bar, labels(trend).get(0));
    assertEquals(bar.split(" ")[0], trend.keyOf(LocalDate.parse("2026-01-01")));
  }

  @Test
  void aWeekBeginsOnMonday() {
    assertEquals(
        List.of("d20251229 2025-12-29", "d20260105 2026-01-05", "d20260302 2026-03-02"),
        labels(ready("2026-01-04", "2026-01-05", "2026-01-11", "2026-03-02")));
  }

  @Test
  void barsAreAsHighAsTheirShareOfTheHighest() {
    Trend trend = ready("2026-01-01", "2026-01-01", "2026-01-01", "2026-01-01", "2026-01-02");
    assertEquals("120.0", trend.height(4));
    assertEquals("0.0", trend.top(4));
    assertEquals("30.0", trend.height(1));
    assertEquals("90.0", trend.top(1));
    assertEquals("4 files", trend.mostInWords());
    assertEquals("1 file", ready("2026-01-01").mostInWords());
  }

  @Test
  void aBarIsNeverNarrowerThanOnePart() {
    String[] days =
        Stream.iterate(LocalDate.parse("1970-01-01"), day -> day.plusMonths(1))
            .limit(400)
            .map(LocalDate::toString)
            .toArray(String[]::new);
    Trend trend = ready(days);
    assertEquals(400, trend.bars().size());
    assertEquals(1.0, trend.bars().get(0).width());
    assertEquals(1.5, trend.bars().get(1).left());
  }
}
