package ridgeproof.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.RecommendedAction;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.finding.Finding;
import ridgeproof.report.data.FindingsCsv;
import ridgeproof.report.page.HtmlReport;
import ridgeproof.report.page.PositionState;
import ridgeproof.report.page.PositionStates;
import ridgeproof.report.page.ReportModel.PositionRow;
import ridgeproof.report.pdf.PaperSize;
import ridgeproof.report.pdf.PdfOptions;
import ridgeproof.report.pdf.PdfReport;
import ridgeproof.report.picture.PrintMeasures;
import ridgeproof.report.prints.ConcernedPrints;
import ridgeproof.report.prints.Mark;
import ridgeproof.report.prints.Print;
import ridgeproof.report.prints.PrintNames;
import ridgeproof.report.prints.PrintPicture;
import ridgeproof.report.prints.PrintPictures;
import ridgeproof.report.prints.PrintScores;
import ridgeproof.spec.rule.Severity;
import ridgeproof.testing.ReferenceFiles;

/**
 * A tenprint card of paper whose slaps and rolls have faults: what each form says of its prints.
 */
@Tag("slow")
class PrintsInReportsTest {

  private static final double POOR = 40;

  private static byte[] card;
  private static FindingsReport report;

  @BeforeAll
  static void examine() {
    card = ReferenceFiles.read("type-4-tpcard.an2");
    report = Reports.examine(card, Depth.RIDGES);
  }

  private static byte[] pdf(boolean withImages) {
    return PdfReport.render(
        Reports.facts(card),
        report,
        RenderOptions.standard(),
        new PdfOptions(
            PaperSize.A4,
            Optional.empty(),
            withImages
                ? Optional.of(image -> Renderings.EXTRACTION.decode(image).pixels())
                : Optional.empty()));
  }

  private static List<Finding> onSlaps() {
    return report.findings().stream()
        .filter(finding -> finding.severity() != Severity.NOTE)
        .filter(finding -> finding.location().position().orElse(0) > 0)
        .filter(finding -> finding.location().record().isPresent())
        .filter(finding -> isOnSlap(finding.location().record().getAsInt()))
        .toList();
  }

  private static boolean isOnSlap(int record) {
    ExaminedImage image = report.imagesByRecord().get(record);
    return image != null && image.position().orElse(0) >= 13;
  }

  @Test
  void everyFindingOnASlapNamesTheFingerInEveryForm() throws IOException {
    List<Finding> findings = onSlaps();
    assertTrue(findings.size() > 2, findings.toString());
    String text = Reports.text(card, report).replaceAll("\\s+", " ");
    String page = HtmlReport.render(Reports.facts(card), report, RenderOptions.standard());
    String pdf = PdfText.unbroken(pdf(false));
    List<String> sheet = fingersOfSheet();
    PrintNames names = new PrintNames(Reports.TABLES);
    for (Finding finding : findings) {
      String finger = names.finger(finding.location().position().getAsInt());
      String place = finger + ", " + ReportPhrases.place(finding.location());
      assertTrue(text.contains(finding.rule().title() + " " + place), place);
      assertTrue(page.contains("<dd>" + place), place);
      assertTrue(pdf.contains(place.replace(" ", "")), place);
      assertTrue(sheet.contains(finding.ruleId() + " " + finger), sheet.toString());
    }
  }

  private static List<String> fingersOfSheet() throws IOException {
    StringWriter sheet = new StringWriter();
    new FindingsCsv(sheet, RenderOptions.standard()).add(Reports.facts(card), report);
    List<String> fingers = new ArrayList<>();
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (CSVParser parser = CSVParser.parse(sheet.toString(), format)) {
      for (CSVRecord row : parser) {
        fingers.add(row.get("rule") + " " + row.get("finger"));
      }
    }
    return fingers;
  }

  @Test
  void everyStepAboutAPrintShowsIt() {
    PrintPictures pictures = new PrintPictures(report, Optional.empty());
    int about = 0;
    for (RecommendedAction action : report.actions()) {
      boolean ofRidges =
          action.findings().stream().anyMatch(finding -> finding.rule().area().equals("RDG"));
      List<PrintPicture> shown = pictures.of(action.findings());
      if (ofRidges) {
        about++;
        assertEquals(1, shown.size(), action.remedy());
        int record = action.findings().get(0).location().record().getAsInt();
        assertEquals(record, shown.get(0).record());
        assertTrue(
            shown.get(0).marks().stream().anyMatch(mark -> mark.kind() == Mark.Kind.FAULT),
            action.remedy());
      }
      shown.forEach(picture -> assertTrue(picture.pixels().isEmpty(), "a print not asked for"));
    }
    assertTrue(about > 3, report.actions().toString());
  }

  @Test
  void aCutPrintIsMarkedAtTheEdgeOfItsImage() {
    Finding cut =
        report.findings().stream()
            .filter(finding -> finding.ruleId().equals("RP-RDG-010"))
            .findFirst()
            .orElseThrow();
    PrintPicture picture = new PrintPictures(report, Optional.empty()).of(List.of(cut)).get(0);
    assertTrue(
        picture.marks().stream()
            .filter(mark -> mark.kind() == Mark.Kind.FAULT)
            .map(mark -> mark.shape().getBounds2D())
            .anyMatch(
                line ->
                    line.getMinX() == line.getMaxX()
                            && (line.getMinX() == 0 || line.getMinX() == picture.imageWidth())
                        || line.getMinY() == line.getMaxY()
                            && (line.getMinY() == 0 || line.getMinY() == picture.imageHeight())));
  }

  @Test
  void printsAreBesideTheStepsOnlyWhenAsked() {
    String without = HtmlReport.render(Reports.facts(card), report, RenderOptions.standard());
    assertTrue(without.contains("<details class=\"shot\">"));
    assertFalse(without.contains("data:image"));
    String with =
        HtmlReport.render(
            Reports.facts(card),
            report,
            RenderOptions.standard(),
            image -> Renderings.EXTRACTION.decode(image).pixels());
    String steps = with.substring(with.indexOf("id=\"steps\""), with.indexOf("id=\"positions\""));
    assertEquals(
        steps.split("<details class=\"shot\">", -1).length,
        steps.split("data:image/png;base64,", -1).length);
  }

  @Test
  void noPrintThatAStepNamesIsTicked() {
    List<PositionRow> rows = new PositionStates(report).rows();
    ConcernedPrints concerned = new ConcernedPrints(report);
    int named = 0;
    for (RecommendedAction action : report.actions()) {
      for (Finding finding : action.findings()) {
        if (List.of("RDG", "SEQ").contains(finding.rule().area())) {
          for (Print print : concerned.of(finding)) {
            named++;
            assertNotEquals(PositionState.PRESENT, state(rows, print), finding.toString());
          }
        }
      }
    }
    assertTrue(named > 5, "prints named: " + named);
  }

  private static PositionState state(List<PositionRow> rows, Print print) {
    int whole = report.imagesByRecord().get(print.record()).position().getAsInt();
    PositionRow row = rows.stream().filter(each -> each.code() == whole).findFirst().orElseThrow();
    OptionalInt finger = print.code();
    return finger.isEmpty()
        ? row.state()
        : row.fingers().stream()
            .filter(each -> each.code() == finger.getAsInt())
            .findFirst()
            .orElseThrow()
            .state();
  }

  @Test
  void aSlapShowsItsFourFingersOneByOne() {
    PositionRow slap =
        new PositionStates(report)
            .rows().stream().filter(row -> row.code() == 14).findFirst().orElseThrow();
    assertEquals(List.of(7, 8, 9, 10), slap.fingers().stream().map(PositionRow::code).toList());
    assertTrue(
        slap.fingers().stream().map(PositionRow::state).distinct().count() > 1,
        "one state for all: " + slap);
  }

  @Test
  void aPrintToRecaptureScoresBelowEveryPrintThatIsNot() {
    PrintScores scores = new PrintScores(report);
    int recaptured = 0;
    for (ExaminedImage image : report.images()) {
      for (var finger : image.ridges().orElseThrow().fingers().entrySet()) {
        int score = scores.of(image, finger.getKey(), finger.getValue());
        if (scores.isRecaptured(image, finger.getKey())) {
          recaptured++;
          assertTrue(score < POOR, finger.getKey() + " " + score);
        } else {
          assertEquals(finger.getValue().score().value(), score);
        }
      }
    }
    assertTrue(recaptured > 0);
  }

  @Test
  void aMeasureIsBeyondItsLimitOnlyWhereAFindingSaysSo() {
    PrintScores scores = new PrintScores(report);
    ReportPhrases wording = new ReportPhrases(Reports.TABLES);
    int beyond = 0;
    for (ExaminedImage image : report.images()) {
      boolean grave =
          report.everyFinding().stream()
              .filter(finding -> finding.severity().worseThan(Severity.ADVICE))
              .anyMatch(finding -> finding.location().record().equals(image.location().record()));
      long broken =
          PrintMeasures.of(image, report, scores, wording).stream()
              .flatMap(print -> print.bars().stream())
              .filter(PrintMeasures.Bar::broken)
              .count();
      beyond += (int) broken;
      assertTrue(grave || broken == 0, image.location().toString());
    }
    assertTrue(beyond > 0);
  }

  @Test
  void aTenprintCardIsPrintedOnSixPagesAtMostAndNoStepIsCut() throws IOException {
    assertTrue(
        report.actions().stream().anyMatch(action -> action.remedy().length() > 140),
        "no step is long");
    for (boolean withImages : List.of(false, true)) {
      byte[] pdf = pdf(withImages);
      try (PDDocument document = Loader.loadPDF(pdf)) {
        assertTrue(document.getNumberOfPages() <= 6, document.getNumberOfPages() + " pages");
      }
      StepsInPdf.assertWhole(report, pdf);
    }
  }
}
