package ridgeproof.report.comparison;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ridgeproof.examination.comparison.FindingChanges;
import ridgeproof.examination.comparison.PersonDoubt;
import ridgeproof.examination.comparison.TransactionComparison;
import ridgeproof.examination.facts.Depth;
import ridgeproof.finding.Finding;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;
import ridgeproof.report.PilotCard;
import ridgeproof.report.RenderOptions;
import ridgeproof.report.Renderings;
import ridgeproof.report.comparison.ComparisonPage.Change;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.rule.RuleRow;
import ridgeproof.spec.rule.Severity;
import ridgeproof.spec.table.Source;
import ridgeproof.spec.table.Source.Knowledge;

/** What two files come to, in words. */
class OutcomeWordingTest {

  private static final Finding PROBLEM = finding(Severity.BLOCKING);
  private static final Finding NOTE = finding(Severity.NOTE);

  private static Finding finding(Severity severity) {
    Source source = new Source("TRADE", "", Knowledge.COMMON_PRACTICE);
    return new Finding(
        new RuleRow("RP-TXN-990", severity, "Title", "", "", source),
        severity,
        Location.file(),
        Observed.of("something"),
        "something else",
        "",
        "",
        source,
        List.of());
  }

  /** Of one card twice, whose records therefore agree. */
  private static TransactionComparison comparison(
      FindingChanges changes, boolean sameBytes, Optional<PersonDoubt> doubt) {
    byte[] bytes = PilotCard.ascii().without(4).bytes();
    TransactionComparison base = Renderings.compare(bytes, bytes, Depth.STRUCTURE);
    return new TransactionComparison(
        base.first(),
        base.second(),
        base.depth(),
        base.ignored(),
        sameBytes,
        base.pairs(),
        base.removed(),
        base.added(),
        changes,
        List.of(),
        doubt,
        false,
        false);
  }

  private static TransactionComparison comparison(FindingChanges changes) {
    return comparison(changes, false, Optional.empty());
  }

  private static FindingChanges problems(int resolved, int present, int added) {
    return new FindingChanges(times(resolved), times(present), times(added));
  }

  private static List<Finding> times(int number) {
    return Stream.concat(Stream.of(NOTE), Stream.generate(() -> PROBLEM).limit(number)).toList();
  }

  @Test
  void identicalFilesAreSaidToBeIdentical() {
    assertEquals(
        "The files are identical.",
        new OutcomeWording(comparison(problems(1, 2, 3), true, Optional.empty())).lead());
  }

  @ParameterizedTest
  @CsvSource({
    "0, 0, 0, no problem was found in either.",
    "1, 0, 0, '1 resolved, 0 still present, 0 new.'",
    "0, 2, 0, '0 resolved, 2 still present, 0 new.'",
    "0, 0, 3, '0 resolved, 0 still present, 3 new.'",
    "1, 1, 0, '1 resolved, 1 still present, 0 new.'",
    "1, 0, 1, '1 resolved, 0 still present, 1 new.'",
    "2, 1, 1, '2 resolved, 1 still present, 1 new.'"
  })
  void problemsAreCountedWithoutNotes(int resolved, int present, int added, String counts) {
    assertEquals(
        "The files have the same contents. HOLD in both files: " + counts,
        new OutcomeWording(comparison(problems(resolved, present, added))).lead());
  }

  @Test
  void aVerdictThatChangedIsNamedBeforeAndAfter() {
    TransactionComparison base =
        Renderings.compare(PilotCard.ascii().bytes(), new byte[] {1, 2, 3}, Depth.STRUCTURE);
    TransactionComparison made =
        new TransactionComparison(
            base.first(),
            base.second(),
            base.depth(),
            base.ignored(),
            false,
            base.pairs(),
            base.removed(),
            base.added(),
            problems(0, 1, 0),
            List.of(),
            Optional.empty(),
            false,
            false);
    OutcomeWording words = new OutcomeWording(made);
    assertEquals(
        base.first().verdict() + " became UNREADABLE: 0 resolved, 1 still present, 0 new.",
        words.lead());
    assertEquals("Second file: This file cannot be read as a transaction.", words.next());
  }

  @Test
  void notesAreCountedBesideTheProblems() {
    OutcomeWording words = new OutcomeWording(comparison(problems(0, 0, 0)));
    assertEquals("", words.notes(List.of()));
    assertEquals("", words.notes(List.of(PROBLEM)));
    assertEquals("1 note", words.notes(List.of(NOTE)));
    assertEquals("2 notes", words.notes(List.of(NOTE, PROBLEM, NOTE)));
  }

  private static String text(FindingChanges changes) {
    String text =
        ComparisonText.render(
            MadeComparison.FIRST,
            MadeComparison.SECOND,
            comparison(changes),
            RenderOptions.standard());
    return text.substring(text.indexOf("\nResolved"), text.indexOf("\nDifferences"));
  }

  @Test
  void theTextTellsNotesBehindTheProblemsOrAlone() {
    assertEquals(
        """

        Resolved
          BLOCKING RP-TXN-990 Title, the file as a whole: found something
          and 1 note

        New
          1 note
        """,
        text(new FindingChanges(List.of(NOTE, PROBLEM), List.of(), List.of(NOTE))));
  }

  @Test
  void thePageCountsNotesBesideTheProblems() {
    TransactionComparison made = comparison(problems(2, 0, 0));
    List<Change> changes =
        new ComparisonContents(
                MadeComparison.FIRST,
                MadeComparison.SECOND,
                made,
                RenderOptions.standard(),
                Optional.empty())
            .page()
            .changes();
    assertEquals(
        List.of("Resolved 2 1 note", "Still present 0 1 note", "New 0 1 note"),
        changes.stream()
            .map(change -> change.title() + " " + change.lines().size() + " " + change.notes())
            .toList());
    String page =
        ComparisonHtml.render(
            MadeComparison.FIRST, MadeComparison.SECOND, made, RenderOptions.standard());
    assertEquals(
        "Resolved: 2 and 1 note",
        page.substring(page.indexOf("Resolved: "), page.indexOf("</h3>"))
            .replaceAll("<[^>]*>", "")
            .replaceAll("\\s+", " ")
            .strip());
  }

  private static Optional<List<String>> doubt(
      PersonDoubt.Kind kind, int fingers, FieldNumber... changed) {
    return new OutcomeWording(
            comparison(
                problems(0, 0, 0),
                false,
                Optional.of(new PersonDoubt(kind, fingers, List.of(changed)))))
        .personDoubt();
  }

  @Test
  void filesOfOnePersonAreNotDoubted() {
    assertEquals(Optional.empty(), new OutcomeWording(comparison(problems(0, 0, 0))).personDoubt());
  }

  @Test
  void samePrintsWithOtherDataAreToBeComparedWithTheSubjectsDocuments() {
    String advice =
        "If the change is a correction, no action is needed. Otherwise one file holds the"
            + " biographic data of another person: compare both with the subject's documents.";
    assertEquals(
        Optional.of(
            List.of(
                "Same prints, different biographic data: Name (2.018), Date of birth (2.022).",
                "1 print is of the same finger in both files.",
                advice)),
        doubt(
            PersonDoubt.Kind.SAME_PRINTS_OTHER_DATA,
            1,
            new FieldNumber(2, 18),
            new FieldNumber(2, 22)));
    assertEquals(
        Optional.of(
            List.of(
                "Same prints, different biographic data: Name (2.018).",
                "2 prints are of the same finger in both files.",
                advice)),
        doubt(PersonDoubt.Kind.SAME_PRINTS_OTHER_DATA, 2, new FieldNumber(2, 18)));
  }

  @Test
  void otherPrintsWithTheSameDataMayBeOfAnotherPerson() {
    assertEquals(
        Optional.of(
            List.of(
                "Same biographic data, different prints.",
                "None of the 9 prints compared match, so they may be another person's.",
                "Check who was captured before you send either file.")),
        doubt(PersonDoubt.Kind.OTHER_PRINTS_SAME_DATA, 9));
  }

  @Test
  void otherPrintsWithOtherDataMayBeOfTwoPeople() {
    assertEquals(
        Optional.of(
            List.of(
                "The files may be of two people.",
                "None of the 9 prints compared match, and these differ: Name (2.018).",
                "Check that you are comparing the right files.")),
        doubt(PersonDoubt.Kind.OTHER_PRINTS_OTHER_DATA, 9, new FieldNumber(2, 18)));
  }
}
