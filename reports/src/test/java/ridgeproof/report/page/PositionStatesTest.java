package ridgeproof.report.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static ridgeproof.report.page.MadeCardReport.field;
import static ridgeproof.report.page.MadeCardReport.finding;
import static ridgeproof.report.page.MadeCardReport.position;
import static ridgeproof.report.page.MadeCardReport.print;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ridgeproof.examination.FindingsReport;
import ridgeproof.finding.CausedBy;
import ridgeproof.finding.Finding;
import ridgeproof.finding.Location;
import ridgeproof.report.PilotCard;
import ridgeproof.report.Reports;
import ridgeproof.report.page.ReportModel.Link;
import ridgeproof.report.page.ReportModel.PositionRow;
import ridgeproof.spec.rule.Severity;

/**
 * What is said of each position of a card. Its records 3 to 12 are the rolled fingers 1 to 10, 13
 * and 14 the plain thumbs, 15 and 16 the slaps.
 */
class PositionStatesTest {

  private static final List<Integer> FLATS = List.of(13, 14, 15);
  private static final int RIGHT_SLAP = 15;

  private static List<PositionRow> rows(FindingsReport report) {
    return new PositionStates(report).rows();
  }

  private static PositionRow row(FindingsReport report, int code) {
    return rows(report).stream().filter(row -> row.code() == code).findFirst().orElseThrow();
  }

  private static String state(FindingsReport report, int code) {
    return words(row(report, code));
  }

  private static String words(PositionRow row) {
    return row.state() + (row.note().isEmpty() ? "" : ": " + row.note());
  }

  /** The fingers of a slap, each with its code. */
  private static String fingers(FindingsReport report, int code) {
    return row(report, code).fingers().stream()
        .map(finger -> finger.code() + " " + words(finger))
        .collect(Collectors.joining(", "));
  }

  private static FindingsReport card(Finding... findings) {
    return MadeCardReport.of(PilotCard.ascii(), findings);
  }

  private static FindingsReport seen(PilotCard card, Finding... findings) {
    return MadeCardReport.withSlapsSeen(MadeCardReport.of(card, findings));
  }

  private static PilotCard flats() {
    return PilotCard.ascii().inOrder(FLATS);
  }

  private static FindingsReport flats(String annotation) {
    return MadeCardReport.of(flats().particular(84, annotation));
  }

  @Test
  void eachImagedPositionIsPresentAndLinksToItsImage() {
    assertEquals(
        List.of(
            "1 right thumb: record 3",
            "2 right index finger: record 4",
            "3 right middle finger: record 5",
            "4 right ring finger: record 6",
            "5 right little finger: record 7",
            "6 left thumb: record 8",
            "7 left index finger: record 9",
            "8 left middle finger: record 10",
            "9 left ring finger: record 11",
            "10 left little finger: record 12",
            "11 plain right thumb: record 13",
            "12 plain left thumb: record 14",
            "13 plain right four fingers: record 15",
            "14 plain left four fingers: record 16"),
        rows(card()).stream()
            .map(row -> row.code() + " " + row.name() + ": " + row.image().get().text())
            .toList());
    assertEquals(Optional.of(new Link("i15", "record 15")), row(card(), 13).image());
    rows(card()).forEach(row -> assertEquals("PRESENT", words(row)));
  }

  @Test
  void aSlapHasItsFingersAndASingleFingerHasNone() {
    Optional<Link> link = Optional.of(new Link("i16", "record 16"));
    assertEquals(
        List.of(
            slapped(7, "left index finger (slap)", link),
            slapped(8, "left middle finger (slap)", link),
            slapped(9, "left ring finger (slap)", link),
            slapped(10, "left little finger (slap)", link)),
        row(card(), 14).fingers());
    assertEquals(List.of(), row(card(), 1).fingers());
    assertEquals(List.of(), row(card(), 11).fingers());
  }

  private static PositionRow slapped(int code, String name, Optional<Link> link) {
    return new PositionRow(code, name, PositionState.PRESENT, "", link, List.of());
  }

  @Test
  void aCombinationOfTwoFingersShowsBoth() {
    FindingsReport mobile = MadeCardReport.of(PilotCard.ascii().inOrder(List.of(40)));
    assertEquals("2 PRESENT, 3 PRESENT", fingers(mobile, 40));
  }

  @Test
  void aPositionBeyondTheCardIsThereOnlyWhereItIsImaged() {
    FindingsReport joint = MadeCardReport.of(PilotCard.ascii().inOrder(List.of(19)));
    assertEquals(15, rows(joint).size());
    assertEquals("PRESENT", state(joint, 19));
  }

  @ParameterizedTest
  @CsvSource({
    "RP-RDG-004, LIKELY, DOUBTFUL: Print is too dry",
    "RP-RDG-004, ADVICE, ADVISED: Print is too dry",
    "RP-RDG-004, NOTE, PRESENT",
    "RP-SEQ-023, BLOCKING, DOUBTFUL: Print is mirrored",
    "RP-SEQ-023, ADVICE, ADVISED: Print is mirrored",
    "RP-SEQ-023, NOTE, PRESENT",
    "RP-IMG-006, BLOCKING, DOUBTFUL: Image is damaged",
    "RP-IMG-006, LIKELY, DOUBTFUL: Image is damaged",
    "RP-IMG-006, ADVICE, PRESENT",
    "RP-IMG-006, NOTE, PRESENT"
  })
  void aDoubtOfThePrintIsSaidFromAdviceOnAndOneOfTheRecordFromLikelyOn(
      String rule, Severity severity, String expected) {
    FindingsReport report = card(finding(rule, severity, print(5, 3)));
    assertEquals(expected, state(report, 3));
    assertEquals("PRESENT", state(report, 2));
  }

  @Test
  void theWorstFindingIsNamed() {
    FindingsReport report =
        card(
            finding("RP-RDG-009", print(5, 3)),
            finding("RP-RDG-004", print(5, 3)),
            finding("RP-IMG-006", print(5, 3)));
    assertEquals("DOUBTFUL: Image is damaged", state(report, 3));
  }

  @Test
  void aFindingOnARetakeOfAPositionCountsForThePosition() {
    PilotCard twice = PilotCard.ascii().inOrder(List.of(1, 2, 2));
    FindingsReport report = MadeCardReport.of(twice, finding("RP-RDG-004", print(5, 2)));
    assertEquals("DOUBTFUL: Print is too dry", state(report, 2));
    assertEquals("PRESENT", state(report, 1));
    assertEquals("record 4", row(report, 2).image().get().text());
  }

  @Test
  void whatIsSaidOfOneFingerOfASlapIsSaidOfItAndOfTheSlap() {
    FindingsReport report = seen(PilotCard.ascii(), finding("RP-RDG-004", print(RIGHT_SLAP, 3)));
    assertEquals(
        "2 PRESENT, 3 DOUBTFUL: Print is too dry, 4 PRESENT, 5 PRESENT", fingers(report, 13));
    assertEquals("DOUBTFUL: Print is too dry", state(report, 13));
    assertEquals("PRESENT", state(report, 3), "the roll of the same finger");
  }

  @Test
  void whatIsSaidOfAWholeSlapIsSaidOfEachOfItsFingers() {
    FindingsReport report = seen(PilotCard.ascii(), finding("RP-IMG-006", print(RIGHT_SLAP, 13)));
    assertEquals(
        "2 DOUBTFUL: Image is damaged, 3 DOUBTFUL: Image is damaged, "
            + "4 DOUBTFUL: Image is damaged, 5 DOUBTFUL: Image is damaged",
        fingers(report, 13));
    FindingsReport tilted = seen(PilotCard.ascii(), finding("RP-RDG-009", print(RIGHT_SLAP, 13)));
    assertEquals(
        "2 ADVISED: Finger or hand is tilted, 3 ADVISED: Finger or hand is tilted, "
            + "4 ADVISED: Finger or hand is tilted, 5 ADVISED: Finger or hand is tilted",
        fingers(tilted, 13));
  }

  @Test
  void aFingerOfASlapThatIsAnnotatedAsMissingIsAccountedForUnlessAFindingIsAboutIt() {
    PilotCard annotated = PilotCard.ascii().particular(84, "3\u001fXX");
    assertEquals("2 PRESENT, 3 ACCOUNTED, 4 PRESENT, 5 PRESENT", fingers(seen(annotated), 13));
    assertEquals(
        "2 PRESENT, 3 DOUBTFUL: Print is too dry, 4 PRESENT, 5 PRESENT",
        fingers(seen(annotated, finding("RP-RDG-004", print(RIGHT_SLAP, 3))), 13));
  }

  @Test
  void aCauseIsNamedAtEachImageWhoseFaultItExplains() {
    Finding mirrored = finding("RP-SEQ-022", Location.file()).explaining(1);
    Finding consequence =
        finding("RP-RDG-017", print(5, 3))
            .causedBy(new CausedBy(mirrored.ruleId(), mirrored.location()));
    FindingsReport report = MadeCardReport.of(card(), List.of(mirrored), List.of(consequence));
    assertEquals("DOUBTFUL: Images are mirrored", state(report, 3));
    assertEquals("PRESENT", state(report, 2));
  }

  @Test
  void aCauseInAnotherPrintIsNotNamedAtThisOne() {
    Finding cause = finding("RP-RDG-004", print(4, 2)).explaining(1);
    Finding consequence =
        finding("RP-RDG-017", print(5, 3)).causedBy(new CausedBy("RP-RDG-004", print(4, 2)));
    FindingsReport report = MadeCardReport.of(card(), List.of(cause), List.of(consequence));
    assertEquals("DOUBTFUL: Print is too dry", state(report, 2));
    assertEquals("PRESENT", state(report, 3));
  }

  @Test
  void aPrintThatTheFileCallsMissingIsDoubtfulThoughTheFindingIsInAnotherRecord() {
    Finding imaged = finding("RP-TXN-005", field(2, 2, 84).withPosition(print(5, 3).position()));
    assertEquals("DOUBTFUL: Annotated as missing, but an image is present", state(card(imaged), 3));
    assertEquals("PRESENT", state(card(imaged), 4));
  }

  @Test
  void aPositionThatIsNeededAndNotImagedIsMissingAndSaysWhatTheFileIsToldOfIt() {
    PilotCard card = PilotCard.ascii().without(4).without(13);
    FindingsReport report =
        MadeCardReport.of(
            card, finding("RP-TXN-007", position(4)), finding("RP-TXN-004", position(4)));
    assertEquals("MISSING: Print is missing", state(report, 4));
    assertEquals("MISSING", state(report, 13));
    assertEquals("2 MISSING, 3 MISSING, 4 MISSING, 5 MISSING", fingers(report, 13));
    assertEquals(Optional.empty(), row(report, 4).image());
    FindingsReport advised = MadeCardReport.of(card, finding("RP-TXN-007", position(4)));
    assertEquals("MISSING", state(advised, 4));
  }

  @Test
  void theFingersOfAMissingSlapAreNotNamedLikeTheRolls() {
    FindingsReport report = MadeCardReport.of(PilotCard.ascii().without(13));
    assertEquals(
        List.of(
            "right index finger (slap)",
            "right middle finger (slap)",
            "right ring finger (slap)",
            "right little finger (slap)"),
        row(report, 13).fingers().stream().map(PositionRow::name).toList());
  }

  @Test
  void theFingersOfAMissingSlapThatAreAnnotatedAreAccountedFor() {
    PilotCard card = PilotCard.ascii().without(13);
    FindingsReport one = MadeCardReport.of(card.particular(84, "3\u001fXX"));
    assertEquals("MISSING", state(one, 13));
    assertEquals("2 MISSING, 3 ACCOUNTED, 4 MISSING, 5 MISSING", fingers(one, 13));
    String all = "2\u001fXX\u001e3\u001fXX\u001e4\u001fUP\u001e5\u001fUP";
    assertEquals("ACCOUNTED", state(MadeCardReport.of(card.particular(84, all)), 13));
  }

  @Test
  void aPositionThatNoSetAsksForIsNotRequired() {
    FindingsReport report =
        MadeCardReport.withProfile(
            MadeCardReport.of(PilotCard.ascii().without(4)), Optional.empty());
    assertEquals("NOT_ASKED", state(report, 4));
    assertEquals(14, rows(report).size());
  }

  @Test
  void thumbsTogetherStandForEachPlainThumb() {
    FindingsReport report = MadeCardReport.of(flats());
    assertEquals("PRESENT: in plain thumbs, left and right", state(report, 11));
    assertEquals("PRESENT: in plain thumbs, left and right", state(report, 12));
    assertEquals(Optional.of(new Link("i5", "record 5")), row(report, 12).image());
    assertEquals(List.of(), row(report, 11).fingers());
    assertEquals("1 PRESENT, 6 PRESENT", fingers(report, 15));
    assertEquals("NOT_ASKED", state(report, 1));
  }

  @Test
  void whatIsSaidOfOneOfTheThumbsTogetherIsNotSaidOfTheOther() {
    FindingsReport report = seen(flats(), finding("RP-RDG-004", print(5, 6)));
    assertEquals("PRESENT: in plain thumbs, left and right", state(report, 11));
    assertEquals("DOUBTFUL: Print is too dry", state(report, 12));
    assertEquals("1 PRESENT, 6 DOUBTFUL: Print is too dry", fingers(report, 15));
  }

  @Test
  void aPlainThumbByItselfIsNotJudgedByTheThumbsTogether() {
    PilotCard both = PilotCard.ascii().inOrder(List.of(11, 13, 14, 15));
    FindingsReport report = seen(both, finding("RP-RDG-004", print(6, 15)));
    assertEquals("PRESENT", state(report, 11));
    assertEquals("DOUBTFUL: Print is too dry", state(report, 12));
  }

  @Test
  void theThumbsApartStandForTheThumbsTogetherOnlyWhereBothAreThere() {
    PilotCard one = PilotCard.ascii().inOrder(List.of(11, 13, 14));
    FindingsReport report =
        MadeCardReport.of(Reports.examineAs("identification-flats", one.bytes()));
    assertEquals("PRESENT", state(report, 11));
    assertEquals("MISSING", state(report, 12));
    assertEquals("MISSING", state(report, 15));
    assertEquals("1 MISSING, 6 MISSING", fingers(report, 15));
    assertEquals("NOT_ASKED", state(report, 6), "no roll is asked for");
  }

  @Test
  void aThumbThatIsAnnotatedAsMissingIsNotPresentInTheThumbsTogether() {
    FindingsReport report = flats("1\u001fXX");
    assertEquals("ACCOUNTED", state(report, 11));
    assertEquals("PRESENT: in plain thumbs, left and right", state(report, 12));
    assertEquals("1 ACCOUNTED, 6 PRESENT", fingers(report, 15));
  }
}
