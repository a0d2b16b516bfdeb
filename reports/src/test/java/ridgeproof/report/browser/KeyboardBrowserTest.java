package ridgeproof.report.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.Keys;

@Tag("slow")
@InChromium
class KeyboardBrowserTest {

  private static final String SUMMARY =
      "clean-flats summary missing-little-finger packed-too-tight length-off-by-one unreadable";

  /** Numbers whatever tab can reach, in the order of the page: of radio buttons the chosen one. */
  private static final String NUMBER_ALL =
      """
      const all = [...document.querySelectorAll('a[href], input, button, select, summary, [tabindex]')];
      const seen = all.filter(element => element.tabIndex >= 0 && element.checkVisibility()
        && !(element.type === 'radio' && !element.checked));
      seen.forEach((element, number) => element.dataset.number = number);
      return seen.length;
      """;

  private static final String FOCUSED =
      "const at = document.activeElement; return Number(at?.dataset?.number ?? -1)";

  private static final String OUTLINED =
      """
      const style = getComputedStyle(document.activeElement);
      const box = document.activeElement.getBoundingClientRect();
      return style.outlineStyle !== 'none' && parseFloat(style.outlineWidth) >= 2
        && box.right > 0 && box.bottom > 0 && box.left < innerWidth && box.top < innerHeight;
      """;

  @ParameterizedTest(name = "{0}")
  @ValueSource(
      strings = {
        "cut-transfer showing-all",
        "clean-flats showing-all",
        "length-off-by-one report",
        "unreadable report",
        "date-turned-round compared-showing-all clean-flats",
        "hostile compared-showing-all clean-flats",
        SUMMARY
      })
  void tabReachesEverythingInTheOrderOfThePageAndLeavesIt(
      String page, TestPages pages, ReportBrowser browser) {
    browser.open(pages.page(page));
    int count = (int) browser.number(NUMBER_ALL);
    assertTrue(count > 5, page);
    List<Integer> forth = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      browser.press(Keys.TAB);
      forth.add((int) browser.number(FOCUSED));
      assertTrue(browser.isTrue(OUTLINED), () -> "no outline at " + forth);
    }
    assertEquals(IntStream.range(0, count).boxed().toList(), forth);
    browser.press(Keys.TAB);
    assertNotEquals(count - 1, browser.number(FOCUSED), "a trap at the end");
    browser.pressWithShift(Keys.TAB);
    List<Integer> back = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      back.add((int) browser.number(FOCUSED));
      browser.pressWithShift(Keys.TAB);
    }
    assertEquals(List.of(count - 1, count - 2, count - 3), back);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "length-off-by-one report, Skip to what to do, #steps",
    "clean-flats compared packed-too-tight, Skip to the result, #verdict + nav",
    SUMMARY + ", Skip to the files, #files"
  })
  void theSkipLinkComesFirstAndLeadsToWhatMatters(
      String page, String words, String next, TestPages pages, ReportBrowser browser) {
    browser.open(pages.page(page));
    browser.press(Keys.TAB);
    assertEquals(words, browser.text("return document.activeElement.textContent"));
    browser.press(Keys.ENTER);
    browser.press(Keys.TAB);
    assertTrue(
        browser.isTrue("return document.activeElement.closest(arguments[0]) !== null", next));
  }

  @Test
  void enterAndSpaceUnfoldAndFoldARecord(TestPages pages, ReportBrowser browser) {
    browser.open(pages.page("length-off-by-one report"));
    String first = "document.querySelector('details:not([open])')";
    browser.evaluate("window.folded = " + first + "; folded.querySelector('summary').focus()");
    assertFalse(browser.isTrue("return folded.open"));
    browser.press(Keys.ENTER);
    assertTrue(browser.isTrue("return folded.open"));
    browser.press(Keys.SPACE);
    assertFalse(browser.isTrue("return folded.open"));
  }

  @Test
  void spaceLeavesOnlyFieldsWithFindings(TestPages pages, ReportBrowser browser) {
    browser.open(pages.page("length-off-by-one report"));
    browser.evaluate("document.querySelectorAll('details').forEach(each => each.open = true)");
    String shown =
        "return [...document.querySelectorAll('.record')].filter(each => each.checkVisibility()).length";
    long all = browser.number(shown);
    browser.evaluate("document.querySelector('#only').focus()");
    browser.press(Keys.SPACE);
    long few = browser.number(shown);
    assertTrue(few > 0 && few < all, few + " of " + all);
    assertEquals(
        0,
        browser.number(
            "return [...document.querySelectorAll('.field')].filter(each => each.checkVisibility()"
                + " && !each.matches('.heads') && !each.querySelector('.flag')).length"));
    browser.press(Keys.SPACE);
    assertEquals(all, browser.number(shown));
  }

  @Test
  void aLinkToAFieldUnfoldsTheRecordItIsIn(TestPages pages, ReportBrowser browser) {
    browser.open(pages.page("length-off-by-one report"));
    browser.evaluate("document.querySelector('.note dd a').focus()");
    browser.press(Keys.ENTER);
    assertTrue(
        browser.isTrue(
            "return document.querySelector(location.hash).checkVisibility({contentVisibilityAuto: true})"));
  }

  @Test
  void spaceLeavesOnlyFilesThatAreNotReady(TestPages pages, ReportBrowser browser) {
    browser.open(pages.page(SUMMARY));
    String shown =
        "return [...document.querySelectorAll('#files tbody tr')].filter(each => each.checkVisibility())"
            + ".map(each => each.querySelector('.state').textContent)";
    List<String> all = browser.texts(shown);
    assertEquals(5, all.size());
    assertTrue(all.contains("READY") && all.contains("REVIEW"), all.toString());
    browser.evaluate("document.querySelector('#only').focus()");
    browser.press(Keys.SPACE);
    assertEquals(
        all.stream().filter(verdict -> !verdict.equals("READY")).toList(), browser.texts(shown));
    browser.press(Keys.SPACE);
    assertEquals(all, browser.texts(shown));
  }

  @Test
  void theNameOfAFileInTheSummaryLeadsToItsReport(TestPages pages, ReportBrowser browser) {
    pages.page("packed-too-tight report");
    browser.open(pages.page(SUMMARY));
    browser.evaluate("document.querySelector('#files a[href^=packed]').focus()");
    browser.press(Keys.ENTER);
    assertEquals("REVIEW", browser.text("return document.querySelector('.stamp').textContent"));
  }

  @Test
  void aRecordOfAComparisonLeadsToItsImages(TestPages pages, ReportBrowser browser) {
    browser.open(pages.page("date-turned-round compared-showing-all clean-flats"));
    browser.evaluate("document.querySelector('#records a[href^=\"#i\"]').focus()");
    browser.press(Keys.ENTER);
    assertTrue(
        browser.isTrue(
            "return document.querySelector(location.hash).matches('.compared')"
                + " && document.querySelector(location.hash).getBoundingClientRect().top < innerHeight"));
  }
}
