package ridgeproof.report.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static ridgeproof.report.page.MadeCardReport.field;
import static ridgeproof.report.page.MadeCardReport.finding;
import static ridgeproof.report.page.MadeCardReport.print;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import ridgeproof.finding.Finding;
import ridgeproof.finding.Measure;
import ridgeproof.report.PilotCard;
import ridgeproof.report.page.ReportModel.FindingNote;
import ridgeproof.spec.rule.Severity;

/** What a note on the page says of a finding. */
class FindingNotesTest {

  private static List<FindingNote> notes(Finding... findings) {
    FindingNotes notes = new FindingNotes(MadeCardReport.of(PilotCard.ascii(), findings), false);
    return List.of(findings).stream().map(notes::note).toList();
  }

  @Test
  void aNoteSaysWhatIsWrongWhereItIsAndWhy() {
    Finding finding =
        finding(
            "RP-IMG-007", Severity.NOTE, print(5, 3), Measure.of("bytes after it", 12, "bytes"));
    FindingNote note = notes(finding).get(0);
    assertEquals(
        new FindingNote(
            "f1",
            "NOTE",
            "RP-IMG-007",
            "Bytes after the end of the image",
            "right middle finger",
            "",
            "",
            "observed",
            "required",
            List.of("bytes after it 12 bytes"),
            Optional.of(finding.explanation()),
            ""),
        note);
    assertTrue(note.isFact());
    FindingNote beside = note.beside("r5-17");
    assertEquals("r5-17", beside.field());
    assertEquals(note, beside.beside(""));
  }

  @Test
  void aMeasureIsANumberAsPeopleWriteIt() {
    assertEquals(
        List.of(
            "prints found 5 prints",
            "right edge 12345 pixels",
            "resolution 1000 ppi",
            "resolution 19.69 pixels per mm",
            "likeness -0.1235",
            "overlap 12.50 %",
            "similarity 7.250 (a match needs 40)"),
        notes(
                finding(
                    "RP-IMG-007",
                    Severity.NOTE,
                    print(5, 3),
                    Measure.against("prints found", 5, "prints", 4),
                    Measure.of("right edge", 12345, "pixels"),
                    Measure.of("resolution", 999.996, "ppi"),
                    Measure.of("resolution", 19.6852, "pixels per mm"),
                    Measure.of("likeness", -0.123456, ""),
                    Measure.of("overlap", 0.125, "share"),
                    Measure.against("similarity", 7.25, "", 40)))
            .get(0)
            .measures());
  }

  @Test
  void onlyANoteIsAMereFact() {
    for (Severity severity : List.of(Severity.BLOCKING, Severity.LIKELY, Severity.ADVICE)) {
      assertFalse(notes(finding("RP-IMG-007", severity, print(5, 3))).get(0).isFact());
    }
  }

  @Test
  void aRepeatedFindingNamesItsPlacesAndASingleOneDoesNot() {
    Finding single = finding("RP-FLD-008", field(3, 14, 5));
    Finding repeated = single.repeatedAt(List.of(single.at(field(4, 14, 5))));
    assertEquals("", notes(single).get(0).places());
    assertEquals("2: record 3; record 4", notes(repeated).get(0).places());
  }

  @Test
  void aCauseSaysHowManyFindingsItExplains() {
    Finding cause = finding("RP-FLD-008", field(3, 14, 5));
    assertEquals(
        "This explains 4 further findings, which are not listed.",
        notes(cause.explaining(4)).get(0).explains());
    assertEquals("", notes(cause).get(0).explains());
  }

  /** A card repeats the same finding up to fourteen times. */
  @Test
  void theReasonOfARuleIsGivenOnce() {
    List<FindingNote> notes =
        notes(
            finding("RP-RDG-004", print(3, 1)),
            finding("RP-RDG-004", print(4, 2)),
            finding("RP-RDG-005", print(4, 2)));
    assertEquals(
        List.of(true, false, true), notes.stream().map(note -> note.why().isPresent()).toList());
  }

  @Test
  void eachFindingHasAnAnchorOfItsOwnThoughAnotherIsEqual() {
    assertEquals(
        List.of("f1", "f2"),
        notes(finding("RP-RDG-004", print(3, 1)), finding("RP-RDG-004", print(3, 1))).stream()
            .map(FindingNote::anchor)
            .toList());
  }
}
