package ridgeproof.report.comparison;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.comparison.TransactionComparison;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.imagery.GrayImage;
import ridgeproof.report.FileFacts;
import ridgeproof.report.PilotCard;
import ridgeproof.report.RenderOptions;
import ridgeproof.report.Renderings;
import ridgeproof.report.Reports;
import ridgeproof.report.picture.DifferencePicture;
import ridgeproof.report.picture.PicturePair;

class ComparisonHtmlTest {

  private static final FileFacts FIRST = new FileFacts("first.an2", 1, "0".repeat(64));
  private static final FileFacts SECOND = new FileFacts("second.an2", 2, "1".repeat(64));

  private static TransactionComparison returnedAndMended() {
    return Renderings.compare(
        PilotCard.ascii().header(5, "20261399").without(4).bytes(),
        PilotCard.ascii()
            .header(9, "PILOT-0002")
            .header(10, "PILOT-0001")
            .particular(18, "SPECIMEN,BEA")
            .recaptured(2)
            .without(5)
            .bytes());
  }

  private static String page(TransactionComparison comparison) {
    return ComparisonHtml.render(FIRST, SECOND, comparison, RenderOptions.standard());
  }

  private static String pageWithImages(TransactionComparison comparison) {
    return ComparisonHtml.render(
        FIRST,
        SECOND,
        comparison,
        RenderOptions.standard(),
        image -> Renderings.EXTRACTION.decode(image).pixels());
  }

  private static List<String> all(String pattern, String text) {
    List<String> found = new ArrayList<>();
    Matcher matcher = Pattern.compile(pattern).matcher(text);
    while (matcher.find()) {
      found.add(matcher.group(1));
    }
    return found;
  }

  @Test
  void everyAnchorIsUniqueAndEveryLinkLeadsToOne() {
    for (String page : List.of(page(returnedAndMended()), pageWithImages(returnedAndMended()))) {
      List<String> anchors = all(" id=\"([^\"]*)\"", page);
      assertEquals(anchors.stream().distinct().toList(), anchors);
      List<String> links = all(" href=\"#([^\"]*)\"", page);
      assertTrue(links.size() > 4, links.toString());
      assertTrue(anchors.containsAll(links), links.toString());
      assertTrue(anchors.containsAll(all(" aria-labelledby=\"([^\"]*)\"", page)), page);
    }
  }

  @Test
  void nothingIsLoadedAndNoScriptRuns() {
    String page = pageWithImages(returnedAndMended());
    assertTrue(page.contains("default-src &#39;none&#39;; style-src &#39;sha256-"), page);
    assertFalse(page.contains("<script"));
    assertFalse(page.contains(" style=\""));
    String style = all("(?s)<style>(.*?)</style>", page).get(0);
    assertFalse(style.contains("url(") || style.contains("@import"));
    assertTrue(style.contains("prefers-color-scheme: dark") && style.contains("@media print"));
  }

  @Test
  void whatWasMendedWhatIsNewAndTheAnswerToTheOtherAreSaid() {
    String page = page(returnedAndMended());
    assertTrue(page.contains("its 1.010 is 1.009 of the first file"), page);
    String findings =
        page.substring(page.indexOf("id=\"findings\""), page.indexOf("id=\"images\""));
    int second = findings.indexOf("<h3>New: ");
    assertTrue(findings.substring(0, second).contains("RP-FLD-008"), findings);
    assertTrue(findings.substring(second).contains("RP-TXN-004"), findings);
    assertTrue(page.contains("<span class=\"change\">removed</span> Record 6: Type-14, IDC 05"));
    assertTrue(page.contains("<span class=\"change\">added</span> Record 6: Type-14, IDC 04"));
    assertTrue(page.contains("Ignored fields (--ignore): LEN, IDC, 1.003"), page);
  }

  @Test
  void personalValuesAreMaskedUnlessAskedFor() {
    assertFalse(page(returnedAndMended()).contains("SPECIMEN"));
    String shown =
        ComparisonHtml.render(
            FIRST, SECOND, returnedAndMended(), new RenderOptions(true, false, 80));
    assertTrue(shown.contains("<td class=\"v\">SPECIMEN,ADA</td>"), shown);
    assertTrue(shown.contains("<td class=\"v\">SPECIMEN,BEA</td>"), shown);
  }

  @Test
  void imagesAreOnThePageOnlyWhenAskedForAndTheirDifferenceOnlyWhereTheyAreAligned() {
    assertFalse(page(returnedAndMended()).contains("data:image"));
    String page = pageWithImages(returnedAndMended());
    assertEquals(2, all("(data:image/png;base64,)", page).size());
    assertEquals(List.of("First", "Second"), all("<figcaption>([^<]*)</figcaption>", page));
  }

  @Test
  void everyAnswerIsToldInWordsAndNotByColourAlone() {
    String page = page(returnedAndMended());
    assertTrue(
        page.contains("<span class=\"sign\" aria-hidden=\"true\">?</span> not determined"), page);
    assertTrue(page.contains("<span class=\"stamp\">DIFFERENT</span>"), page);
  }

  @Test
  void aFileComparedWithItselfHasAPageThatSaysSo() {
    byte[] bytes = PilotCard.ascii().bytes();
    String page = page(Renderings.compare(bytes, bytes));
    assertTrue(page.contains("<span class=\"stamp\">SAME</span>"), page);
    assertTrue(page.contains("No record differs in anything that counts."), page);
  }

  @Test
  void filesThatAreNoTransactionsHaveAPageToo() {
    String page = page(Renderings.compare(new byte[] {1, 2}, new byte[] {3}));
    assertTrue(page.contains("<span class=\"stamp\">STILL PRESENT</span>"), page);
    assertTrue(page.contains("UNREADABLE"), page);
  }

  @Test
  void ofALongValueThePartThatDiffersIsShown() {
    String alike = "K".repeat(1 << 20);
    TransactionComparison comparison =
        Renderings.compare(
            PilotCard.ascii().header(8, alike + "X" + alike).bytes(),
            PilotCard.ascii().header(8, alike + "Y").bytes(),
            Depth.STRUCTURE);
    String page = page(comparison);
    String from = "from character 1,048,537 on: " + "K".repeat(40);
    assertTrue(page.contains(">" + from + "X" + "K".repeat(559) + " ... and 1,048,017 more"));
    assertTrue(page.contains(">" + from + "Y<"));
    assertTrue(page.length() < 60_000, page.length() + " characters");
    String text = ComparisonText.render(FIRST, SECOND, comparison, RenderOptions.standard());
    assertTrue(text.length() < 6_000, text.length() + " characters");
  }

  @Test
  void imagesOfDifferentResolutionAreDrawnAtOneScale() {
    ExaminedImage coarse = print("500");
    ExaminedImage fine = print("1000");
    PicturePair pair =
        PicturePair.of("", coarse, fine, Optional.empty(), Optional.empty(), Optional.empty());
    PicturePair.Sheet first = pair.sheets().get(0);
    PicturePair.Sheet second = pair.sheets().get(1);
    assertEquals(800 / 500.0 * 25.4, first.width(), 1e-9);
    assertEquals(first.width() / 2, second.width(), 1e-9);
    assertEquals(first.height() / 2, second.height(), 1e-9);
    assertEquals(first.width(), pair.width(), 1e-9);
  }

  private static ExaminedImage print(String ppi) {
    PilotCard card = PilotCard.ascii().print(6, "800").print(7, "750");
    byte[] bytes = card.print(9, ppi).print(10, ppi).bytes();
    return Reports.examine(bytes, Depth.STRUCTURE).images().get(0);
  }

  @Test
  void theDifferenceIsWhiteWhereNothingDiffersAndBlackWhereMostDoes() {
    GrayImage first = GrayImage.owning(3, 1, new byte[] {10, 20, 30});
    GrayImage second = GrayImage.owning(3, 1, new byte[] {10, 25, 20});
    GrayImage difference = DifferencePicture.of(first, second).orElseThrow();
    assertEquals(255, difference.grayAt(0, 0));
    assertEquals(128, difference.grayAt(1, 0));
    assertEquals(0, difference.grayAt(2, 0));
    GrayImage other = GrayImage.owning(1, 1, new byte[] {0});
    assertTrue(DifferencePicture.of(first, other).isEmpty());
  }
}
