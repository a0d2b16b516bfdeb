package ridgeproof.report.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.Keys;

/** The prints beside the steps are seen at once, and larger when asked for. */
@Tag("slow")
@InChromium
class PrintsBrowserTest {

  private static final String FIRST = ".shot summary";
  private static final String WIDTH =
      "return Math.round(document.querySelector('.shot svg').getBoundingClientRect().width)";

  @ParameterizedTest(name = "{0}")
  @ValueSource(strings = {"dry-and-wet showing-all", "thumbs-exchanged report"})
  void aPrintIsEnlargedByMouseAndByKeyboard(String page, TestPages pages, ReportBrowser browser) {
    browser.open(pages.page(page));
    long small = browser.number(WIDTH);
    assertTrue(small >= 200 && small <= 400, small + " pixels");
    browser.click(FIRST);
    long large = browser.number(WIDTH);
    assertTrue(large > small * 3 / 2, large + " pixels");
    browser.click(FIRST);
    assertEquals(small, browser.number(WIDTH));
    browser.evaluate("document.querySelector(arguments[0]).focus()", FIRST);
    for (Keys key : List.of(Keys.ENTER, Keys.SPACE)) {
      browser.press(key);
      assertEquals(large, browser.number(WIDTH));
      browser.press(key);
      assertEquals(small, browser.number(WIDTH));
    }
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(strings = {"dry-and-wet showing-all", "thumbs-exchanged report"})
  void theFirstScreenShowsVerdictStepPrintAndHands(
      String page, TestPages pages, ReportBrowser browser) {
    browser.open(pages.page(page));
    browser.width(1280);
    assertEquals(
        List.of(),
        browser.texts(
            """
            return ['.stamp', '#steps .remedy', '#steps .shot svg', '.hand svg'].filter(each =>
              document.querySelector(each).getBoundingClientRect().bottom > 800);
            """));
  }

  @Test
  void theHandsSayInWordsWhatTheyDraw(TestPages pages, ReportBrowser browser) {
    browser.open(pages.page("dry-and-wet showing-all"));
    String words = browser.text("return document.querySelector('#right-hand-desc').textContent");
    assertTrue(words.contains("right index finger (slap): recapture or correct"), words);
    assertTrue(words.contains("plain right thumb: present"), words);
    assertEquals(8, browser.number("return document.querySelectorAll('.hand .doubtful').length"));
    assertEquals(2, browser.number("return document.querySelectorAll('.hand .present').length"));
  }

  @Test
  void thePageOfAReadyFileSaysNothingOfLimitsExceeded(TestPages pages, ReportBrowser browser) {
    browser.open(pages.page("clean-flats showing-all"));
    browser.evaluate("document.querySelectorAll('details').forEach(each => each.open = true)");
    assertEquals("READY", browser.text("return document.querySelector('.stamp').textContent"));
    assertTrue(
        browser.number("return document.querySelectorAll('.measures tbody tr').length") > 10);
    assertEquals(0, browser.number("return document.querySelectorAll('.gauge.beyond').length"));
    assertFalse(browser.text("return document.body.innerText").contains("beyond"));
  }

  @Test
  void notesAndFieldsAreFoldedUntilAskedFor(TestPages pages, ReportBrowser browser) {
    browser.open(pages.page("thumbs-exchanged report"));
    assertEquals(
        0,
        browser.number(
            "return document.querySelectorAll('.contents[open], .facts-only[open]').length"));
    assertTrue(browser.number("return document.querySelectorAll('.contents').length") > 10);
  }

  @Test
  void aTenprintCardIsPrintedOnSixPagesAtMost(TestPages pages, ReportBrowser browser)
      throws IOException {
    browser.open(pages.page("thumbs-exchanged report"));
    try (PDDocument printed = Loader.loadPDF(browser.printed())) {
      assertTrue(printed.getNumberOfPages() <= 6, printed.getNumberOfPages() + " pages");
    }
  }
}
