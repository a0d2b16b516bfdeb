package ridgeproof.ledger.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ridgeproof.ledger.ResponseMessage;
import ridgeproof.ledger.store.LedgerStore;
import ridgeproof.spec.SpecTables;

class WaitingTimesTest {

  @TempDir Path folder;

  private static List<String> bars(Map<Integer, Long> days) {
    return WaitingTimes.of(new TreeMap<>(days)).bars().stream()
        .map(bar -> bar.words() + ": " + bar.count())
        .toList();
  }

  @Test
  void aFewDaysHaveABarEachWithoutGaps() {
    assertEquals(
        List.of("0 days: 0", "1 day: 3", "2 days: 0", "3 days: 7"), bars(Map.of(1, 3L, 3, 7L)));
  }

  @Test
  void longerTimesAreTakenTogether() {
    assertEquals(
        List.of("0 to 1 days: 5", "2 to 3 days: 1"),
        bars(Map.of(0, 2L, 1, 3L, 3, 1L, 20, 1L)).subList(0, 2));
    List<String> weeks = bars(Map.of(3, 2L, 60, 1L));
    assertEquals("0 to 6 days: 2", weeks.get(0));
    assertEquals("56 to 62 days: 1", weeks.get(weeks.size() - 1));
    assertEquals(1, bars(Map.of(100_000, 1L)).stream().filter(bar -> bar.endsWith(" 1")).count());
  }

  @Test
  void nothingThatWasAcceptedHasNoBar() {
    assertEquals(List.of(), bars(Map.of()));
  }

  private LedgerReport report(int accepted) {
    SampleYear year = new SampleYear("TIDEWATER");
    for (int i = 0; i < accepted; i++) {
      year.submission(i, "A" + i, SampleYear.FIRST, List.of(), "first");
      year.response("A" + i, SampleYear.FIRST.plusDays(1 + i % 4), List.<ResponseMessage>of());
    }
    try (LedgerStore store =
        LedgerStore.open(
            "jdbc:sqlite:" + folder.resolve("ledger.db"), SampleYear.HASH.verifier())) {
      store.addAll(year.entries());
      return LedgerReport.of(store, SpecTables.open(), Map.of(), SampleYear.FIRST.plusYears(1));
    }
  }

  @Test
  void theReportHasTheBarsAndTheShares() {
    String text = LedgerText.render(report(12));
    assertTrue(
        text.contains(
            "Of 12 accepted submissions, half took at most 2 days and nine of ten at most 4 days."),
        text);
    assertTrue(text.contains("  0 days              0\n  1 day               3 ####"), text);
  }

  @Test
  void belowTenCasesThereAreBarsAndNoShares() {
    LedgerReport report = report(9);
    String text = LedgerText.render(report);
    assertTrue(text.contains("9 accepted submissions: fewer than 10 cases, no shares."), text);
    assertFalse(text.contains("nine of ten"), text);
    assertTrue(text.contains("  1 day               3 ####"), text);
    String page = LedgerPage.render(report);
    assertTrue(page.contains("9 accepted submissions: fewer than 10 cases, no shares."), page);
    assertTrue(page.contains("class=\"column\""), page);
    // Neither in a sentence nor in a table is there a percentage of so few, only the one of
    // intervals and of the error rate.
    assertFalse(page.replaceAll("95 %|\\d+ %</text>", "").matches("(?s).*\\d %.*"), page);
  }
}
