package ridgeproof.report.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openqa.selenium.Keys;

/** What was seen of ridges is laid over the images and taken off again, layer by layer. */
@InChromium
@Tag("slow")
class OverlayBrowserTest {

  private static final String PAGE = "clean-flats showing-all";

  private static final String LAYERS_SEEN =
      """
      const seen = path => path.checkVisibility() && path.getBoundingClientRect().width > 0;
      return ['clear-ridges', 'boxes', 'singular', 'minutiae']
        .filter(layer => [...document.querySelectorAll('.over.' + layer)].some(seen));
      """;

  @ParameterizedTest(name = "{1}")
  @CsvSource({
    "show-ridges, clear-ridges",
    "show-boxes, boxes",
    "show-singular, singular",
    "show-minutiae, minutiae"
  })
  void aLayerIsShownAndHiddenByMouseAndByKeyboard(
      String box, String layer, TestPages pages, ReportBrowser browser) {
    browser.open(pages.page(PAGE));
    assertEquals(List.of(), browser.texts(LAYERS_SEEN));
    byte[] bare = firstImage(browser);
    for (String target : List.of("#" + box, "label[for=" + box + "]")) {
      browser.click(target);
      assertShown(layer, bare, browser);
      browser.click(target);
      assertHidden(bare, browser);
    }
    browser.evaluate("document.getElementById(arguments[0]).focus()", box);
    browser.press(Keys.SPACE);
    assertShown(layer, bare, browser);
    browser.press(Keys.SPACE);
    assertHidden(bare, browser);
  }

  private static void assertShown(String layer, byte[] bare, ReportBrowser browser) {
    assertEquals(List.of(layer), browser.texts(LAYERS_SEEN));
    assertFalse(Arrays.equals(bare, firstImage(browser)), "nothing is drawn over the image");
  }

  private static void assertHidden(byte[] bare, ReportBrowser browser) {
    assertEquals(List.of(), browser.texts(LAYERS_SEEN));
    assertTrue(Arrays.equals(bare, firstImage(browser)), "something stays on the image");
  }

  private static byte[] firstImage(ReportBrowser browser) {
    return browser.screenshotOf(".picture image");
  }

  @Test
  void layersAreShownTogether(TestPages pages, ReportBrowser browser) {
    browser.open(pages.page(PAGE));
    browser.click("#show-boxes");
    browser.click("#show-minutiae");
    assertEquals(List.of("boxes", "minutiae"), browser.texts(LAYERS_SEEN));
  }

  @Test
  void everyImageOfAPrintHasItsLayersWithinIt(TestPages pages, ReportBrowser browser) {
    browser.open(pages.page(PAGE));
    for (String box : List.of("show-boxes", "show-singular", "show-minutiae", "show-ridges")) {
      browser.click("#" + box);
    }
    assertTrue(browser.number("return document.querySelectorAll('.picture image').length") > 0);
    assertEquals(
        List.of(),
        browser.texts(
            """
            return [...document.querySelectorAll('.picture > svg')].flatMap(svg => {
              const image = svg.querySelector('image').getBoundingClientRect();
              return [...svg.querySelectorAll('.over')].filter(path => {
                const box = path.getBoundingClientRect();
                return path.getAttribute('d') === '' || box.left < image.left - 8 || box.top < image.top - 8
                  || box.right > image.right + 8 || box.bottom > image.bottom + 8;
              }).map(path => path.getAttribute('class') + ' of ' + svg.getAttribute('aria-label'));
            });
            """));
  }

  @Test
  void withoutImagesThereIsNothingToLayOver(TestPages pages, ReportBrowser browser) {
    browser.open(pages.page("clean-flats report"));
    assertEquals(0, browser.number("return document.querySelectorAll('.layers, .over').length"));
  }
}
