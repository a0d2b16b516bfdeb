package ridgeproof.report.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static ridgeproof.report.page.MadeCardReport.field;
import static ridgeproof.report.page.MadeCardReport.finding;
import static ridgeproof.report.page.MadeCardReport.page;
import static ridgeproof.report.page.MadeCardReport.pageWithImages;
import static ridgeproof.report.page.MadeCardReport.position;
import static ridgeproof.report.page.MadeCardReport.print;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.facts.Depth;
import ridgeproof.finding.Finding;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;
import ridgeproof.report.PilotCard;
import ridgeproof.report.RenderOptions;
import ridgeproof.report.ReportPhrases;
import ridgeproof.report.Reports;
import ridgeproof.report.page.ReportModel.Fact;
import ridgeproof.report.page.ReportModel.FindingNote;
import ridgeproof.report.page.ReportModel.RuleNote;
import ridgeproof.report.picture.Picture;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.rule.Severity;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.record.CharacterEncoding;
import ridgeproof.transaction.writer.FieldDraft;
import ridgeproof.transaction.writer.RecordDraft;
import ridgeproof.transaction.writer.TransactionWriter;

/** What the page says, part by part. */
class ReportModelBuilderTest {

  private static final int RIGHT_SLAP = 15;

  private static ReportModel examined(PilotCard card, Depth depth) {
    return page(Reports.examine(card.bytes(), depth));
  }

  private static String fact(ReportModel page, String name) {
    return page.facts().stream()
        .filter(fact -> fact.name().equals(name))
        .map(Fact::value)
        .findFirst()
        .orElse("");
  }

  @Test
  void thePageOpensWithTheVerdictAndTheFindingsCounted() {
    ReportModel page =
        page(
            MadeCardReport.of(
                Reports.examine(PilotCard.ascii().without(4).bytes(), Depth.STRUCTURE),
                finding("RP-TXN-004", position(4)),
                finding("RP-RDG-004", print(3, 1))));
    assertEquals("HOLD: card.an2 \u2013 Ridgeproof", page.head().title());
    assertEquals("card.an2", page.fileName());
    assertEquals("HOLD", page.verdict());
    assertEquals(
        "Do not send yet: a bureau that follows the published standards will reject this file.",
        page.verdictWords());
    assertEquals("Findings: 1 BLOCKING, 1 LIKELY.", page.counts());
    assertEquals(ReportPhrases.CAUTIONS, page.cautions());
  }

  @Test
  void theFactsSayWhatWasExaminedAndHow() {
    assertEquals(
        List.of(
            new Fact("Size", "1,234,567 bytes", false),
            new Fact("Version", "0500", false),
            new Fact("Type of transaction", "FAUF", true),
            new Fact("Contents", "16 records, 14 images", false),
            new Fact(
                "Checked as", "Rolled tenprint card (inferred from the file's contents)", false),
            new Fact("Depth", "structure; images were not checked", false),
            new Fact("Dates checked as of", "2026-03-02", false),
            new Fact("SHA-256", "ab".repeat(32), true)),
        page(PilotCard.ascii()).facts());
  }

  @Test
  void theDepthSaysWhatWasNotChecked() {
    PilotCard card = PilotCard.ascii().inOrder(List.of(1));
    assertEquals(
        "structure and images; ridges were not checked",
        fact(examined(card, Depth.IMAGES), "Depth"));
    assertEquals("structure, images, and ridges", fact(examined(card, Depth.RIDGES), "Depth"));
  }

  @Test
  void aTypeOfTransactionThatIsNotKnownSaysThatCompletenessWasNotJudgedByIt() {
    ReportModel page = examined(PilotCard.ascii().header(4, "THPX"), Depth.STRUCTURE);
    assertEquals("THPX", fact(page, "Type of transaction"));
    assertEquals(
        "checked against the file's contents only: the type of transaction is not in any published"
            + " list",
        fact(page, "Completeness"));
  }

  @Test
  void ofAFileWithoutRecordsThereIsNothingButTheFileItself() {
    byte[] bytes = {1, 2, 3};
    ReportModel page = page(Reports.examine(bytes, Depth.IMAGES));
    assertEquals(
        List.of("Size", "Depth", "Dates checked as of", "SHA-256"),
        page.facts().stream().map(Fact::name).toList());
    assertEquals("UNREADABLE", page.verdict());
    assertEquals(List.of(), page.hands());
    assertEquals(List.of(), page.positions());
    assertEquals(List.of(), page.records());
    assertEquals("", page.sequence());
  }

  @Test
  void handsAreShownWhereThereArePrintsOrASetAsksForThem() {
    FindingsReport card = MadeCardReport.of(PilotCard.ascii());
    ReportModel byPrints = page(MadeCardReport.withProfile(card, Optional.empty()));
    assertEquals(2, byPrints.hands().size());
    assertEquals(14, byPrints.positions().size());
    FindingsReport none = MadeCardReport.of(PilotCard.ascii().inOrder(List.of()));
    ReportModel asked = page(MadeCardReport.withProfile(none, card.profile()));
    assertEquals(2, asked.hands().size());
    assertEquals(14, asked.positions().size());
    ReportModel neither = page(MadeCardReport.withProfile(none, Optional.empty()));
    assertEquals(List.of(), neither.hands());
    assertEquals(List.of(), neither.positions());
  }

  @Test
  void aFaceAloneHasNeitherHandsNorPositions() {
    List<RecordDraft> records =
        List.of(
            RecordDraft.tagged(1, List.of(text(1, 1, ""), text(1, 2, "0500"), text(1, 3, ""))),
            RecordDraft.tagged(
                10,
                List.of(
                    text(10, 1, ""),
                    text(10, 2, "00"),
                    FieldDraft.data(new FieldNumber(10, 999), ByteSource.of(new byte[6])))));
    byte[] face = new TransactionWriter(CharacterEncoding.ASCII).write(records);
    ReportModel page =
        page(
            MadeCardReport.withProfile(
                MadeCardReport.of(Reports.examine(face, Depth.STRUCTURE)), Optional.empty()));
    assertEquals(
        List.of("Face, other body part, scar, mark or tattoo image"),
        page.pictures().stream().map(Picture::title).toList());
    assertEquals(List.of(), page.hands());
    assertEquals(List.of(), page.positions());
  }

  private static FieldDraft text(int type, int number, String value) {
    return FieldDraft.text(new FieldNumber(type, number), value);
  }

  @Test
  void anImageIsNamedByItsFingerAndSaysTheWorstOfIt() {
    ReportModel page =
        page(
            PilotCard.ascii(),
            finding("RP-RDG-009", print(3, 1)),
            finding("RP-RDG-004", print(4, 2)),
            finding("RP-RDG-009", print(4, 2)),
            finding("RP-RDG-005", print(4, 2)),
            finding("RP-RDG-004", print(4, 2)),
            finding("RP-IMG-010", print(5, 3)));
    List<Picture> pictures = page.pictures();
    assertEquals(
        List.of(
            "i3 right thumb, live-scan rolled; advice ADVICE: Finger or hand is tilted",
            "i4 right index finger, live-scan rolled; "
                + "likely LIKELY: Print is too dry; Print is too dark",
            "i5 right middle finger, live-scan rolled;  "),
        pictures.stream()
            .limit(3)
            .map(
                picture ->
                    picture.anchor()
                        + (" " + picture.title())
                        + ("; " + picture.severity())
                        + (" " + picture.state()))
            .toList());
    assertEquals("32 x 24 px, 0.06 x 0.05 in at 500 ppi, uncompressed", pictures.get(0).measures());
    assertEquals(14, pictures.size());
  }

  @Test
  void anImageWithoutPositionIsNamedByItsRecordAndOneWithoutImpressionByItsFingerAlone() {
    assertEquals(
        "Fingerprint image", page(PilotCard.ascii().print(13, "")).pictures().get(0).title());
    assertEquals("right thumb", page(PilotCard.ascii().print(3, "")).pictures().get(0).title());
  }

  @Test
  void anImageHasItsPixelsWhereTheyAreShownAndTheScoresOfItsPrints() {
    FindingsReport report = MadeCardReport.withSlapsSeen(MadeCardReport.of(PilotCard.ascii()));
    assertEquals(Optional.empty(), page(report).pictures().get(0).source());
    assertEquals(false, page(report).imagesShown());
    assertEquals(false, page(report).hasOverlays());
    ReportModel shown = pageWithImages(report);
    assertEquals(true, shown.imagesShown());
    assertEquals(true, shown.hasOverlays());
    assertEquals(
        Optional.of("data:image/png;base64,"),
        shown.pictures().get(0).source().map(text -> text.substring(0, 22)));
    Picture slap = page(report).pictures().get(RIGHT_SLAP - 3);
    assertEquals(
        "right index finger, score 52 of 100; right middle finger, score 53 of 100; "
            + "right ring finger, score 54 of 100; right little finger, score 55 of 100",
        slap.scores());
    assertEquals("", page(report).pictures().get(0).scores());
  }

  @Test
  void whatTheWholeFileHasStandsBeforeItsRecordsAndFactsAreApart() {
    ReportModel page =
        page(
            PilotCard.ascii(),
            finding("RP-TXN-007", position(4)),
            finding("RP-TXN-006", Severity.NOTE, Location.file()),
            finding("RP-FLD-001", field(2, 2, 19)));
    assertEquals(List.of("f1", "f2"), anchors(page.wholeFile()));
    assertEquals(List.of("f1"), anchors(page.asking()));
    assertEquals(List.of("f2"), anchors(page.wholeFileFacts()));
    assertEquals(List.of("f3"), anchors(page.records().get(1).findings()));
    assertEquals(true, page.hasFindingsInRecords());
    assertEquals(
        false, page(PilotCard.ascii(), finding("RP-TXN-007", position(4))).hasFindingsInRecords());
  }

  private static List<String> anchors(List<FindingNote> notes) {
    return notes.stream().map(FindingNote::anchor).toList();
  }

  @Test
  void eachRuleIsExplainedOnceInTheOrderOfItsIdAndEachDocumentNamed() {
    ReportModel page =
        page(
            PilotCard.ascii(),
            finding("RP-RDG-004", print(3, 1)),
            finding("RP-RDG-004", print(4, 2)),
            finding("RP-FLD-008", field(2, 2, 20)));
    assertEquals(
        List.of(
            new RuleNote(
                "RP-FLD-008",
                "BLOCKING",
                "Invalid format",
                "The value is not in the format of the field. The bureau cannot process a record"
                    + " with an invalid value in this field.",
                "Correct the field: enter what is required.",
                "ITL2015, record layouts (from memory)"),
            new RuleNote(
                "RP-RDG-004",
                "LIKELY",
                "Print is too dry",
                "Dry skin breaks the ridges into pieces. The bureau's software sees false ridge"
                    + " endings and may not find a match.",
                "Before the next attempt, add a trace of moisture to the finger, and press a little"
                    + " more firmly.",
                "TRADE (common practice)")),
        page.rules());
    assertEquals(
        List.of(
            new Fact(
                "ITL2015",
                "ANSI/NIST-ITL 1-2011 Update 2015 (NIST Special Publication 500-290e3)",
                false),
            new Fact("TRADE", "What practitioners of ten-print capture agree on", false)),
        page.documents());
  }

  @Test
  void positionsInWordsListWhatIsAskedForWithTheFingersOfWhichSomethingIsSaid() {
    ReportModel page =
        page(
            MadeCardReport.withSlapsSeen(
                MadeCardReport.of(
                    PilotCard.ascii().inOrder(List.of(13, 14, 15)),
                    finding("RP-RDG-004", print(3, 4)))));
    assertEquals(
        List.of(
            "11 plain right thumb",
            "12 plain left thumb",
            "13 plain right four fingers",
            "4 right ring finger (slap)",
            "14 plain left four fingers",
            "15 plain thumbs, left and right"),
        page.asked().stream().map(row -> row.code() + " " + row.name()).toList());
    assertEquals(
        "1 right thumb; 2 right index finger; 3 right middle finger; 4 right ring finger; "
            + "5 right little finger; 6 left thumb; 7 left index finger; 8 left middle finger; "
            + "9 left ring finger; 10 left little finger",
        page.notAsked());
  }

  @Test
  void theOptionsSayWhetherPersonalDataIsShownAndFactsAreOpen() {
    FindingsReport report =
        MadeCardReport.of(
            PilotCard.ascii(),
            new Finding(
                MadeCardReport.rule("RP-FLD-008"),
                Severity.BLOCKING,
                field(2, 2, 18),
                Observed.personal("SPECIMEN,ADA"),
                "required",
                "Why.",
                "Correct it.",
                MadeCardReport.rule("RP-FLD-008").source(),
                List.of()));
    ReportModel masked = page(report);
    assertEquals(false, masked.personalShown());
    assertEquals(false, masked.unfolded());
    assertEquals("[masked]", masked.records().get(1).findings().get(0).found());
    assertEquals(
        "Correct it. The value is masked in this report. To see it, repeat the examination on this"
            + " machine with --show-personal.",
        masked.steps().get(0).remedy());
    RenderOptions all = new RenderOptions(true, false, 80, true);
    ReportModel shown =
        new ReportModelBuilder(MadeCardReport.FILE, report, all, Optional.empty()).page();
    assertEquals(true, shown.personalShown());
    assertEquals(true, shown.unfolded());
    assertEquals("SPECIMEN,ADA", shown.records().get(1).findings().get(0).found());
    assertEquals("Correct it.", shown.steps().get(0).remedy());
  }
}
