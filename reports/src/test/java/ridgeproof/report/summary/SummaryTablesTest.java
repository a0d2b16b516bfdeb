package ridgeproof.report.summary;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.StringWriter;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.Verdict;
import ridgeproof.finding.Finding;
import ridgeproof.finding.Location;
import ridgeproof.report.FileAccount;
import ridgeproof.report.FileFacts;
import ridgeproof.report.NotExamined;
import ridgeproof.report.PilotCard;
import ridgeproof.report.RenderOptions;
import ridgeproof.report.Reports;
import ridgeproof.report.summary.SummaryPage.OriginRow;
import ridgeproof.report.summary.SummaryPage.OriginTable;
import ridgeproof.report.summary.SummaryPage.PositionRow;
import ridgeproof.report.summary.SummaryPage.Share;
import ridgeproof.report.summary.Tally.RuleCount;
import ridgeproof.spec.consistency.CaptureOrigin.Kind;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.rule.Severity;

/** The tables of a summary by rule, by origin, by position and by file. */
class SummaryTablesTest {

  private static final FieldNumber EQUIPMENT = new FieldNumber(2, 67);

  private static final FindingsReport READY = MadeReport.of(Verdict.READY);

  private static SummaryPage page(Tally all, PositionCounts positions, OriginCounts... origins) {
    return new SummaryContents(
            all, positions, List.of(origins), List.of(), List.of(), List.of(), false)
        .page();
  }

  private static SummaryPage page(Tally all, OriginCounts... origins) {
    return page(all, new PositionCounts(Reports.TABLES), origins);
  }

  private static Finding finding(String rule) {
    return MadeReport.finding(rule, Severity.LIKELY);
  }

  private static Finding[] rules(int number) {
    return IntStream.range(0, number)
        .mapToObj(i -> finding("RP-TXN-9" + (10 + i)))
        .toArray(Finding[]::new);
  }

  @Test
  void thePageIsTitledByTheNumberOfFiles() {
    assertEquals(
        "Summary of 2 files \u2013 Ridgeproof",
        page(MadeReport.tally(READY, READY)).head().title());
    assertEquals(
        "Summary of 1 file \u2013 Ridgeproof", page(MadeReport.tally(READY)).head().title());
  }

  @Test
  void twentyRulesAreListedAndTheOthersCounted() {
    SummaryPage twenty = page(MadeReport.tally(MadeReport.of(Verdict.REVIEW, rules(20))));
    assertEquals(20, twenty.rules().size());
    assertEquals(0, twenty.furtherRules());
    SummaryPage more = page(MadeReport.tally(MadeReport.of(Verdict.REVIEW, rules(23))));
    assertEquals(20, more.rules().size());
    assertEquals(3, more.furtherRules());
  }

  @Test
  void aRemedyThatHangsOnOneFileIsLeftOut() {
    Tally tally =
        MadeReport.tally(
            MadeReport.of(
                Verdict.REVIEW,
                MadeReport.finding(
                    "RP-TXN-990", Severity.LIKELY, Location.file(), "Enter {required}."),
                MadeReport.finding(
                    "RP-TXN-991", Severity.LIKELY, Location.file(), "Enter {name} ({field}).")));
    assertEquals(
        List.of("RP-TXN-990: ", "RP-TXN-991: Enter the field."),
        page(tally).rules().stream().map(rule -> rule.id() + ": " + rule.remedy()).toList());
  }

  /** The worst severity with which a rule was met in any file. */
  @Test
  void aRuleIsCountedOnceForEachFileAndAsItsWorstFinding() {
    Tally tally =
        MadeReport.tally(
            MadeReport.of(
                Verdict.REVIEW,
                MadeReport.finding("RP-TXN-990", Severity.ADVICE),
                MadeReport.finding("RP-TXN-990", Severity.ADVICE)),
            MadeReport.of(
                Verdict.REVIEW,
                MadeReport.finding("RP-TXN-990", Severity.LIKELY),
                MadeReport.finding("RP-TXN-990", Severity.ADVICE)));
    assertEquals(
        List.of("RP-TXN-990 LIKELY 2 4"),
        tally.commonest().stream().map(SummaryTablesTest::words).toList());
  }

  private static String words(RuleCount count) {
    return count.rule().id()
        + " "
        + count.severity()
        + " "
        + count.files()
        + " "
        + count.findings();
  }

  @Test
  void rulesInAsManyFilesAreOrderedByTheirSeverityThenByTheirNumber() {
    Finding note = MadeReport.finding("RP-TXN-990", Severity.NOTE);
    Finding advice = MadeReport.finding("RP-TXN-991", Severity.ADVICE);
    Finding likely = MadeReport.finding("RP-TXN-995", Severity.LIKELY);
    Finding otherLikely = MadeReport.finding("RP-TXN-994", Severity.LIKELY);
    Finding often = MadeReport.finding("RP-TXN-999", Severity.ADVICE);
    Tally tally =
        MadeReport.tally(
            MadeReport.of(Verdict.REVIEW, note, advice, likely, otherLikely, often),
            MadeReport.of(Verdict.READY, often));
    assertEquals(
        List.of("RP-TXN-999", "RP-TXN-994", "RP-TXN-995", "RP-TXN-991"),
        tally.commonest().stream().map(count -> count.rule().id()).toList());
  }

  private static OriginCounts stations(List<FieldNumber> fields, FindingsReport... reports) {
    OriginCounts stations = new OriginCounts(Kind.STATION, fields);
    for (FindingsReport report : reports) {
      stations.add(report);
    }
    return stations;
  }

  private static FindingsReport at(String station, Verdict verdict, Finding... findings) {
    return MadeReport.of(verdict, PilotCard.ascii().particular(67, station), findings);
  }

  @Test
  void anOriginIsListedWithItsVerdictsAndItsThreeMostFrequentRules() {
    OriginCounts stations =
        stations(
            List.of(EQUIPMENT),
            at("TIDE", Verdict.READY),
            at("TIDE", Verdict.HOLD, rules(4)),
            at("TIDE", Verdict.HOLD, finding("RP-TXN-912")),
            at("TIDE", Verdict.REVIEW, finding("RP-TXN-912")),
            at("ANCHOR", Verdict.READY));
    assertEquals(
        List.of(
            new OriginTable(
                "by-station",
                "By station",
                "Taken from field 2.067",
                "Station",
                List.of(
                    new OriginRow(
                        "station A",
                        false,
                        new Share("1 of 4", "25 %", 25),
                        "1 REVIEW, 2 HOLD",
                        List.of(
                            "RP-TXN-912 Title of RP-TXN-912 (3 files)",
                            "RP-TXN-910 Title of RP-TXN-910 (1 file)",
                            "RP-TXN-911 Title of RP-TXN-911 (1 file)")),
                    new OriginRow(
                        "station B", false, new Share("1 of 1", "100 %", 100), "", List.of())))),
        page(MadeReport.tally(READY), stations).origins());
  }

  @Test
  void severalFieldsOfAnOriginAreNamedInTheirOrder() {
    OriginCounts stations =
        stations(List.of(EQUIPMENT, new FieldNumber(14, 904)), at("TIDE", Verdict.UNREADABLE));
    OriginTable table = page(MadeReport.tally(READY), stations).origins().get(0);
    assertEquals(
        "Taken from the first of these fields that has a value: 2.067, 14.904", table.caption());
    assertEquals("1 UNREADABLE", table.rows().get(0).others());
  }

  @Test
  void aPositionIsListedWithItsSharesOfAllFiles() {
    PositionCounts positions = new PositionCounts(Reports.TABLES);
    positions.add(
        MadeReport.of(
            Verdict.HOLD,
            MadeReport.finding("RP-IMG-990", Severity.LIKELY, Location.inRecord(3, 14), "")));
    assertEquals(
        List.of(
            new PositionRow(
                1, "right thumb", new Share("1 of 4", "25 %", 25), new Share("0 of 4", "0 %", 0))),
        page(MadeReport.tally(READY, READY, READY, READY), positions).positions());
  }

  @Test
  void theLengthOfABarIsItsPercentage() {
    assertEquals("33.3", new Share("1 of 3", "33 %", 100.0 / 3).length());
  }

  private static String digest(FindingsReport... reports) {
    FolderDigest digest = new FolderDigest();
    for (int i = 0; i < reports.length; i++) {
      digest.add(new FileFacts("f" + i, 1, ""), reports[i]);
    }
    String text = digest.text(new FileAccount(reports.length, List.of()));
    return text.substring(text.indexOf("Worst files"));
  }

  @Test
  void amongFilesAsBadTheOneWithMostOfItsWorstFindingsComesFirst() {
    Finding blocking = MadeReport.finding("RP-TXN-990", Severity.BLOCKING);
    Finding advice = MadeReport.finding("RP-TXN-991", Severity.ADVICE);
    assertEquals(
        """
        Worst files
          HOLD        f2: 3 BLOCKING, first RP-TXN-990 Title of RP-TXN-990
          HOLD        f1: 2 BLOCKING, first RP-TXN-990 Title of RP-TXN-990
          HOLD        f0: 1 BLOCKING, first RP-TXN-990 Title of RP-TXN-990
        """,
        digest(
            MadeReport.of(Verdict.HOLD, advice, advice, advice, advice, blocking),
            MadeReport.of(Verdict.HOLD, blocking, blocking),
            MadeReport.of(Verdict.HOLD, blocking, blocking, blocking)));
  }

  private static List<String> sheet(FindingsReport... reports) throws IOException {
    StringWriter out = new StringWriter();
    FilesCsv csv = new FilesCsv(out);
    for (FindingsReport report : reports) {
      csv.add(new FileFacts("file.an2", 1234, "a".repeat(64)), report);
    }
    csv.add(List.of(new NotExamined("notes.txt", "not a transaction")));
    return out.toString().lines().toList();
  }

  @Test
  void aSheetHasARowOfEveryValueForEachFile() throws IOException {
    Finding likely = MadeReport.finding("RP-TXN-990", Severity.LIKELY, Location.file(), "Do this.");
    Finding advice = MadeReport.finding("RP-TXN-991", Severity.ADVICE);
    Finding note = MadeReport.finding("RP-TXN-992", Severity.NOTE);
    String hash = "a".repeat(64);
    assertEquals(
        List.of(
            "file,sha256,bytes,verdict,blocking,likely,advice,note,captured,transaction_type,"
                + "records,images,worst_rule,worst_title,worst_remedy",
            "file.an2,"
                + hash
                + ",1234,REVIEW,0,1,2,3,2026-03-02,FAUF,16,14,"
                + "RP-TXN-990,Title of RP-TXN-990,Do this.",
            "file.an2," + hash + ",1234,READY,0,0,0,1,2026-03-02,FAUF,16,14,,,",
            "notes.txt,,,NOT EXAMINED,,,,,,,,,,not a transaction,"),
        sheet(
            MadeReport.of(Verdict.REVIEW, advice, note, likely, advice, note, note),
            MadeReport.of(Verdict.READY, note)));
  }

  private static String captured(PilotCard card) throws IOException {
    return sheet(MadeReport.of(Verdict.READY, card)).get(1).split(",")[8];
  }

  @Test
  void aFileIsOfTheFirstDayOfItsPrintsOrOfItsOwn() throws IOException {
    assertEquals("2026-02-28", captured(PilotCard.ascii().print(5, "20260228")));
    assertEquals("2026-03-01", captured(PilotCard.ascii().print(5, "").header(5, "20260301")));
    assertEquals("", captured(PilotCard.ascii().print(5, "20269999").header(5, "2026")));
  }

  /** A day behind the one of the examination may be a time zone away, and no more. */
  @Test
  void aDayInTheFutureIsNoDayOfCapture() throws IOException {
    assertEquals("2026-03-03", captured(PilotCard.ascii().print(5, "20260303")));
    assertEquals(
        "2026-03-01", captured(PilotCard.ascii().print(5, "20260304").header(5, "20260301")));
  }

  @Test
  void aFileCanBePickedByItsRulesButNotByItsNotes() {
    FolderSummary summary = new FolderSummary(Reports.TABLES, RenderOptions.standard(), List.of());
    Finding note = MadeReport.finding("RP-TXN-992", Severity.NOTE);
    summary.add(
        new FileFacts("f", 1, ""),
        MadeReport.of(Verdict.REVIEW, note, finding("RP-TXN-990"), finding("RP-TXN-990")),
        "f.html");
    String page = summary.page();
    int row = page.indexOf("<tr class=\"RP-TXN-990 review ");
    assertEquals(
        "<tr class=\"RP-TXN-990 review d20260302 w-LIKELY\">",
        page.substring(row, page.indexOf('>', row) + 1));
  }
}
