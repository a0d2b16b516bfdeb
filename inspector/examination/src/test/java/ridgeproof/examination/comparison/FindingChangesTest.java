package ridgeproof.examination.comparison;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ridgeproof.examination.SampleCard;
import ridgeproof.examination.Verdict;
import ridgeproof.finding.Finding;

/** Which problems are resolved, still present and new, and what that comes to. */
class FindingChangesTest {

  private static final SampleCard CARD = SampleCard.rolledTagged();

  private static SampleCard born(SampleCard card, String date) {
    return card.with(2, draft -> draft.with(22, date));
  }

  private static void changes(
      SampleCard first,
      SampleCard second,
      List<String> resolved,
      List<String> present,
      List<String> added) {
    FindingChanges changes = Compared.cards(first, second).changes();
    assertEquals(resolved, Compared.findings(changes.resolved()), "resolved");
    assertEquals(present, Compared.findings(changes.present()), "present");
    assertEquals(added, Compared.findings(changes.added()), "added");
  }

  @Test
  void aFindingIsResolvedPresentOrNew() {
    SampleCard wrong = born(CARD, "20261399");
    changes(CARD, CARD, List.of(), List.of(), List.of());
    changes(wrong, CARD, List.of("RP-FLD-008 2.022"), List.of(), List.of());
    changes(CARD, wrong, List.of(), List.of(), List.of("RP-FLD-008 2.022"));
    changes(wrong, born(CARD, "20261398"), List.of(), List.of("RP-FLD-008 2.022"), List.of());
  }

  @Test
  void aFindingOfAPrintGoesWithThePrint() {
    SampleCard first = CARD.with(4, draft -> draft.with(5, "20261399")).without(3);
    SampleCard second = CARD.with(4, draft -> draft.with(5, "20261398"));
    changes(first, second, List.of("RP-TXN-004 finger 1"), List.of("RP-FLD-008 14.005"), List.of());
  }

  @Test
  void aFindingOfOneRecordIsNotThatOfAnother() {
    changes(
        CARD.with(4, draft -> draft.with(5, "20261399")),
        CARD.with(5, draft -> draft.with(5, "20261399")),
        List.of("RP-FLD-008 14.005"),
        List.of(),
        List.of("RP-FLD-008 14.005"));
  }

  @Test
  void ofTwoEntriesThatAreWrongOneIsStillPresent() {
    SampleCard two = CARD.with(2, draft -> draft.with(21, List.of(List.of("ZQ"), List.of("ZX"))));
    SampleCard one = CARD.with(2, draft -> draft.with(21, List.of(List.of("ZQ"), List.of("US"))));
    assertEquals(
        List.of("\"ZX\""),
        Compared.cards(two, one).changes().resolved().stream()
            .map(finding -> finding.observed().text())
            .toList());
    assertEquals(1, Compared.cards(two, one).changes().present().size());
    assertEquals(1, Compared.cards(one, two).changes().added().size());
  }

  @Test
  void anEntryThatMovedHasTheFindingItHad() {
    SampleCard first = CARD.with(2, draft -> draft.with(21, List.of(List.of("ZQ"), List.of("US"))));
    SampleCard second =
        CARD.with(2, draft -> draft.with(21, List.of(List.of("US"), List.of("ZQ"))));
    changes(first, second, List.of(), List.of("RP-PTL-011 2.021"), List.of());
  }

  /** Of two wrong entries the one in the same place is the same problem, whatever it says now. */
  @Test
  void anEntryThatChangedInItsPlaceIsStillPresent() {
    SampleCard two = CARD.with(2, draft -> draft.with(21, List.of(List.of("ZQ"), List.of("ZX"))));
    SampleCard one = CARD.with(2, draft -> draft.with(21, List.of(List.of("US"), List.of("ZY"))));
    FindingChanges changes = Compared.cards(two, one).changes();
    assertEquals(List.of("\"ZQ\""), observed(changes.resolved()));
    assertEquals(List.of("\"ZY\""), observed(changes.present()));
    assertEquals(List.of(), observed(changes.added()));
  }

  @Test
  void ofTwoFindingsInOnePlaceTheOneThatSaysTheSameIsTheSame() {
    Finding before = born(CARD, "20261399").examine().findings().get(0);
    Finding after = born(CARD, "20261398").examine().findings().get(0);
    MadePrints card = MadePrints.on(CARD, 1);
    FindingChanges changes =
        Compared.reports(card.report(List.of(before, after)), card.report(List.of(after)))
            .changes();
    assertEquals(List.of("\"20261399\""), observed(changes.resolved()));
    assertEquals(List.of("\"20261398\""), observed(changes.present()));
    assertEquals(List.of(), observed(changes.added()));
  }

  private static List<String> observed(List<Finding> findings) {
    return findings.stream().map(finding -> finding.observed().text()).toList();
  }

  /** Problems are written as letters: r resolved, p present, a added; n is a note of each. */
  @ParameterizedTest(name = "{0} to {1} with {2}")
  @CsvSource({
    "HOLD, READY, r, RESOLVED",
    "HOLD, READY, rn, RESOLVED",
    "HOLD, HOLD, r, RESOLVED",
    "HOLD, REVIEW, rp, BETTER",
    "HOLD, REVIEW, ra, BETTER",
    "HOLD, REVIEW, a, BETTER",
    "HOLD, REVIEW, p, BETTER",
    "HOLD, HOLD, rp, BETTER",
    "HOLD, HOLD, p, STILL_PRESENT",
    "HOLD, HOLD, pn, STILL_PRESENT",
    "HOLD, HOLD, pa, WORSE",
    "HOLD, HOLD, a, WORSE",
    "READY, HOLD, ra, WORSE",
    "READY, HOLD, r, WORSE",
    "HOLD, HOLD, rpa, DIFFERENT",
    "HOLD, HOLD, ra, DIFFERENT",
    "READY, READY, '', DIFFERENT",
    "READY, READY, n, DIFFERENT",
  })
  void theOutcomeGoesByVerdictAndProblems(
      Verdict first, Verdict second, String found, ComparisonOutcome outcome) {
    FindingChanges changes =
        new FindingChanges(some(found, "r"), some(found, "p"), some(found, "a"));
    assertEquals(outcome, ComparisonOutcome.of(false, first, second, changes));
    assertEquals(ComparisonOutcome.SAME, ComparisonOutcome.of(true, first, second, changes));
  }

  private static final Finding PROBLEM = born(CARD, "20261399").examine().findings().get(0);
  private static final Finding NOTE =
      CARD.with(2, draft -> draft.with(2, "20")).examine().findings().get(0);

  private static List<Finding> some(String found, String letter) {
    return Stream.concat(
            found.contains(letter) ? Stream.of(PROBLEM) : Stream.empty(),
            found.contains("n") ? Stream.of(NOTE) : Stream.empty())
        .toList();
  }
}
