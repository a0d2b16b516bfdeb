package ridgeproof.report.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Also leaves pictures of every page in {@code target/screenshots} for people to look at. */
@Tag("slow")
@InChromium
class LayoutBrowserTest {

  private static final Path SCREENSHOTS = Path.of("target/screenshots");
  private static final int TALLEST_SCREENSHOT = 2400;

  /** A sheet of A4 less the margins of the style sheet, at 96 CSS pixels to the inch. */
  private static final int SHEET = 680;

  /** Elements that reach beyond the page or hide part of what they hold. */
  private static final String CUT =
      """
      const wide = document.documentElement.clientWidth;
      return [...document.body.querySelectorAll('*')].filter(element => {
        if (element.closest('.word') || element.closest('defs') || element.closest('.skip')) return false;
        const box = element.getBoundingClientRect();
        const hides = getComputedStyle(element).overflowX !== 'visible' && !element.closest('svg')
          && element.scrollWidth > element.clientWidth + 1;
        return box.width > 0 && (box.left < -1 || box.right > wide + 1 || hides);
      }).map(element => element.tagName + '.' + (element.getAttribute('class') || '') + ' '
          + element.textContent.trim().slice(0, 40)).slice(0, 5);
      """;

  private static final String UNSEEN =
      """
      const parts = '.field:not(.heads), .note, .rule, .picture, .compared, .side, .steps > li, main tr';
      return [...document.querySelectorAll(parts)]
        .filter(element => !element.closest('details:not([open])'))
        .filter(element => !element.closest('.order-name, .order-day, .order-station'))
        .filter(element => !element.checkVisibility({contentVisibilityAuto: true})
          || element.getBoundingClientRect().height === 0)
        .map(element => element.textContent.trim().slice(0, 40)).slice(0, 5);
      """;

  @ParameterizedTest(name = "{0}")
  @MethodSource("ridgeproof.report.browser.TestPages#names")
  void aPageIsAsWideAsItsWindow(String page, TestPages pages, ReportBrowser browser)
      throws IOException {
    browser.open(pages.page(page));
    for (int width : List.of(1280, 768, 360)) {
      browser.width(width);
      assertEquals(width, browser.number("return document.documentElement.scrollWidth"), page);
      assertEquals(List.of(), browser.texts(CUT), page + " at " + width);
      keep(page, width, "", browser);
    }
    browser.media("", true);
    keep(page, 360, "-dark", browser);
    browser.width(1280);
    keep(page, 1280, "-dark", browser);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("ridgeproof.report.browser.TestPages#names")
  void everythingIsOnPaperAndNothingCut(String page, TestPages pages, ReportBrowser browser)
      throws IOException {
    browser.open(pages.page(page));
    browser.media("print", false);
    browser.width(SHEET);
    assertEquals(List.of(), browser.texts(UNSEEN), page);
    assertEquals(List.of(), browser.texts(CUT), page);
    keep(page, SHEET, "-print", browser);
  }

  private static void keep(String page, int width, String view, ReportBrowser browser)
      throws IOException {
    Files.createDirectories(SCREENSHOTS);
    long height = browser.number("return document.documentElement.scrollHeight");
    byte[] png = browser.screenshot(width, (int) Math.min(height, TALLEST_SCREENSHOT));
    assertTrue(png.length > 1000, page);
    Files.write(SCREENSHOTS.resolve(page.replace(' ', '-') + "-" + width + view + ".png"), png);
  }
}
