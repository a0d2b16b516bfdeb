package ridgeproof.report.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.facts.Depth;
import ridgeproof.report.PdfText;
import ridgeproof.report.PilotCard;
import ridgeproof.report.RenderOptions;
import ridgeproof.report.Renderings;
import ridgeproof.report.ReportPhrases;
import ridgeproof.report.Reports;
import ridgeproof.spec.rule.Severity;
import ridgeproof.testing.ReferenceFiles;

class PdfReportTest {

  private static final Instant TIME = Instant.parse("2026-03-02T10:15:00Z");
  private static final byte[] CARD =
      PilotCard.ascii().without(4).header(5, "20261399").print(8, "7").bytes();

  private static final FindingsReport REPORT = Reports.examine(CARD, Depth.IMAGES);
  private static final PdfOptions WITH_IMAGES =
      new PdfOptions(
          PaperSize.A4,
          Optional.empty(),
          Optional.of(image -> Renderings.EXTRACTION.decode(image).pixels()));
  private static final byte[] PDF = pdf(PdfOptions.standard());
  private static final byte[] PDF_WITH_IMAGES = pdf(WITH_IMAGES);

  private static byte[] pdf(PdfOptions options) {
    return pdf(CARD, REPORT, options);
  }

  private static byte[] pdf(byte[] bytes, FindingsReport report, PdfOptions options) {
    return PdfReport.render(Reports.facts(bytes), report, RenderOptions.standard(), options);
  }

  private static byte[] pdf(byte[] bytes) {
    return pdf(bytes, Reports.examine(bytes, Depth.IMAGES), PdfOptions.standard());
  }

  private static List<PDStructureElement> structure(PDDocument document) {
    List<PDStructureElement> elements = new ArrayList<>();
    collect(document.getDocumentCatalog().getStructureTreeRoot(), elements);
    return elements;
  }

  private static void collect(PDStructureNode node, List<PDStructureElement> elements) {
    for (Object kid : node.getKids()) {
      if (kid instanceof PDStructureElement element) {
        elements.add(element);
        collect(element, elements);
      }
    }
  }

  private static List<PDStructureElement> of(List<PDStructureElement> elements, String type) {
    return elements.stream().filter(element -> type.equals(element.getStructureType())).toList();
  }

  @Test
  void itIsTaggedInItsLanguageAndShowsItsTitle() throws IOException {
    try (PDDocument document = Loader.loadPDF(PDF)) {
      var catalog = document.getDocumentCatalog();
      assertTrue(catalog.getMarkInfo().isMarked());
      assertEquals("en", catalog.getLanguage());
      assertTrue(catalog.getViewerPreferences().displayDocTitle());
      List<PDStructureElement> elements = structure(document);
      assertEquals(1, of(elements, "H1").size());
      assertEquals(7, of(elements, "H2").size());
      assertTrue(of(elements, "TH").size() > 30, "headers of rows and columns");
      assertTrue(of(elements, "LI").size() > 2, "steps");
    }
  }

  @Test
  void everyImageIsTaggedAndToldInWords() throws IOException {
    try (PDDocument document = Loader.loadPDF(PDF_WITH_IMAGES)) {
      List<PDStructureElement> figures = of(structure(document), "Figure");
      assertEquals(13, figures.size());
      figures.forEach(
          figure ->
              assertTrue(
                  figure.getAlternateDescription().matches("image of record \\d+: .+"),
                  figure.getAlternateDescription()));
    }
  }

  @Test
  void everyFontIsEmbedded() throws IOException {
    try (PDDocument document = Loader.loadPDF(PDF)) {
      int fonts = 0;
      for (PDPage page : document.getPages()) {
        for (COSName name : page.getResources().getFontNames()) {
          assertTrue(page.getResources().getFont(name).isEmbedded(), name.getName());
          fonts++;
        }
      }
      assertTrue(fonts > 2);
    }
  }

  @Test
  void aSheetHasTheSizeOfThePaper() throws IOException {
    assertSize(PDRectangle.A4, PDF);
    assertSize(
        PDRectangle.LETTER,
        pdf(new PdfOptions(PaperSize.LETTER, Optional.empty(), Optional.empty())));
  }

  private static void assertSize(PDRectangle expected, byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      assertTrue(document.getNumberOfPages() > 2);
      for (PDPage page : document.getPages()) {
        assertEquals(expected.getWidth(), page.getMediaBox().getWidth(), 0.5);
        assertEquals(expected.getHeight(), page.getMediaBox().getHeight(), 0.5);
      }
    }
  }

  @Test
  void itSaysInOrderWhatThePageSays() {
    String text = PdfText.of(PDF);
    List<String> parts =
        new ArrayList<>(
            List.of(
                REPORT.verdict().name(),
                "What to do",
                "\nFingers",
                "\nWhat was examined",
                "\nImages",
                "\nFindings",
                "\nRules and sources",
                "\nCautions"));
    parts.addAll(ReportPhrases.CAUTIONS);
    int at = 0;
    for (String part : parts) {
      int next = text.indexOf(part, at);
      assertTrue(next >= at, part.strip() + " is not in its place");
      at = next;
    }
  }

  @Test
  void everyFindingIsInIt() {
    String text = PdfText.of(PDF);
    long heads =
        text.lines().filter(line -> line.matches("(BLOCKING|LIKELY|ADVICE|NOTE) RP-[^:]*")).count();
    assertEquals(
        REPORT.findings().stream().filter(finding -> finding.severity() != Severity.NOTE).count(),
        heads);
    assertTrue(heads > 10);
  }

  @Test
  void everySheetIsNumberedAndNamesTheFile() throws IOException {
    try (PDDocument document = Loader.loadPDF(PDF)) {
      int sheets = document.getNumberOfPages();
      List<String> lines =
          PdfText.of(PDF).lines().map(line -> line.replaceAll(" +", " ").strip()).toList();
      for (int sheet = 1; sheet <= sheets; sheet++) {
        String foot = "Page %d of %d file.an2, SHA-256 0000000000000000".formatted(sheet, sheets);
        assertTrue(lines.contains(foot), foot);
      }
    }
  }

  @Test
  void theSameInputAndTimeGiveTheSameBytes() {
    PdfOptions options = new PdfOptions(PaperSize.A4, Optional.of(TIME), Optional.empty());
    byte[] pdf = pdf(options);
    FindingsReport again = Reports.examine(CARD.clone(), Depth.IMAGES);
    assertArrayEquals(pdf, pdf(CARD, again, options));
    assertTrue(PdfText.of(pdf).contains("Created 2026-03-02T10:15:00Z"));
    assertFalse(PdfText.of(PDF).contains("Created "));
  }

  @Test
  void itTellsItsTitleAndProducerAndNothingElseOfItself() throws IOException {
    try (PDDocument document = Loader.loadPDF(PDF)) {
      PDDocumentInformation information = document.getDocumentInformation();
      assertEquals(Set.of("Title", "Producer"), information.getMetadataKeys());
      assertEquals("Ridgeproof", information.getProducer());
      assertTrue(information.getTitle().endsWith(": file.an2 \u2013 Ridgeproof"));
    }
  }

  @Test
  void nothingInItActs() {
    assertEquals(Set.of(), PdfText.acting(PDF));
  }

  @Test
  void aCardWithItsImagesIsUnderThreeMegabytes() {
    byte[] bytes = ReferenceFiles.read("type-4-tpcard.an2");
    int size = pdf(bytes, Reports.examine(bytes, Depth.IMAGES), WITH_IMAGES).length;
    assertTrue(size > 500_000, "the images are missing: " + size);
    assertTrue(size < 3_000_000, size + " bytes");
  }

  @Test
  void aValueOfAMegabyteIsCutAndSaysSo() {
    byte[] bytes = PilotCard.ascii().header(9, "K".repeat(1 << 20)).bytes();
    byte[] pdf =
        PdfReport.render(
            Reports.facts(bytes),
            Reports.examine(bytes, Depth.IMAGES),
            RenderOptions.standard().withEveryFinding(true),
            PdfOptions.standard());
    assertTrue(PdfText.unbroken(pdf).contains("...and1,047,976morecharacters"));
    assertTrue(pdf.length < 300_000, pdf.length + " bytes");
  }

  @Test
  void aCharacterThatNoFontDrawsIsEscaped() {
    assertEquals(
        "caf\u00e9 \u041c\u03a9 \\u6F22\\u05D0\\u1F6A2",
        drawable("caf\u00e9 \u041c\u03a9 \u6f22\u05d0\ud83d\udea2"));
  }

  private static String drawable(String text) {
    try (ReportFonts fonts = new ReportFonts()) {
      return fonts.drawable(text);
    }
  }

  @Test
  void aFileThatIsNoTransactionHasADocumentToo() {
    String text = PdfText.of(pdf(new byte[] {1, 2, 3}));
    assertTrue(text.contains("UNREADABLE"), text);
    assertTrue(text.contains("No record could be read."), text);
  }

  @Test
  void imagesAreInItOnlyWhenAsked() {
    assertTrue(PdfText.of(PDF).contains("The images are not shown"));
    assertTrue(PdfText.of(PDF_WITH_IMAGES).contains("The images are personal data"));
    assertTrue(PDF_WITH_IMAGES.length > PDF.length);
  }
}
