package ridgeproof.ledger.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ridgeproof.ledger.EntryFinding;
import ridgeproof.ledger.store.LedgerStore;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.rule.Severity;

/** How often it helped to capture a finger again. */
class RecapturesTest {

  private static final LocalDate DAY = SampleYear.FIRST;
  private static final List<EntryFinding> DRY = List.of(SampleYear.finding(2));

  @TempDir Path folder;

  private final SampleYear year = new SampleYear("TIDEWATER");

  private LedgerReport report() {
    try (LedgerStore store =
        LedgerStore.open(
            "jdbc:sqlite:" + folder.resolve("ledger.db"), SampleYear.HASH.verifier())) {
      store.addAll(year.entries());
      return LedgerReport.of(store, SpecTables.open(), Map.of(), DAY.plusYears(1));
    }
  }

  private void twice(
      String control, List<EntryFinding> before, String capture, List<EntryFinding> after) {
    year.submission(0, control, DAY, before, "first");
    year.submission(0, control, DAY.plusDays(1), after, capture);
  }

  @Test
  void aNewCaptureWithoutTheFindingHasHelped() {
    twice("A", DRY, "second", List.of());
    assertEquals(
        new Recaptures(new Share(1, 1), Map.of("RP-RDG-004", new Share(1, 1))),
        report().recaptures());
  }

  @Test
  void aNewCaptureWithTheSameFindingHasNot() {
    twice("A", DRY, "second", DRY);
    assertEquals(
        new Recaptures(new Share(0, 1), Map.of("RP-RDG-004", new Share(0, 1))),
        report().recaptures());
  }

  @Test
  void aNewCaptureWithAnotherFindingHasHelpedOnlyAgainstTheFirst() {
    twice(
        "A",
        DRY,
        "second",
        List.of(
            new EntryFinding("RP-RDG-005", Severity.LIKELY, SampleYear.finding(2).finger(), "")));
    assertEquals(
        new Recaptures(new Share(0, 1), Map.of("RP-RDG-004", new Share(1, 1))),
        report().recaptures());
  }

  @Test
  void theSameImageSentAgainIsNoRecapture() {
    twice("A", DRY, "first", List.of());
    assertEquals(new Recaptures(new Share(0, 0), Map.of()), report().recaptures());
  }

  @Test
  void aNewCaptureOfAFingerWithoutAFindingIsNotCounted() {
    twice("A", List.of(), "second", List.of());
    assertEquals(0, report().recaptures().all().all());
  }

  @Test
  void captureAfterCaptureEachCounts() {
    year.submission(0, "A", DAY, DRY, "first");
    year.submission(0, "A", DAY.plusDays(1), DRY, "second");
    year.submission(0, "A", DAY.plusDays(2), List.of(), "third");
    assertEquals(new Share(1, 2), report().recaptures().all());
  }

  @Test
  void aReportSaysHowOftenItHelpedAndThatCasesAreFew() {
    twice("A", DRY, "second", List.of());
    twice("B", DRY, "second", DRY);
    LedgerReport report = report();
    String text = LedgerText.render(report);
    assertTrue(
        text.contains(
            "without a finding after the recapture: 1 of 2 (fewer than 10 cases, no percentage)"),
        text);
    assertTrue(text.contains("RP-RDG-004 Print is too dry no longer found: 1 of 2 (fewer"), text);
    String page = LedgerPage.render(report);
    assertTrue(page.contains("1 of 2 (fewer than 10 cases, no percentage)"), page);
  }

  @Test
  void ofTenCasesAPercentageIsGiven() {
    for (int i = 0; i < 12; i++) {
      twice("A" + i, DRY, "second", i < 9 ? List.of() : DRY);
    }
    String text = LedgerText.render(report());
    assertTrue(
        text.contains("without a finding after the recapture: 9 of 12: 75 % (47 to 91 %)"), text);
  }
}
