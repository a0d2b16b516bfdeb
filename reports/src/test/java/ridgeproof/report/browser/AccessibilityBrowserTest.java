package ridgeproof.report.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Web Content Accessibility Guidelines 2.1, levels A and AA, as far as a program can tell. */
@Tag("slow")
@InChromium
class AccessibilityBrowserTest {

  /** The night changes nothing but colours, and a narrow window nothing but places. */
  private static final String RULES_OF_COLOUR = "color-contrast";

  private static final String[] RULES_OF_SIZE = {
    "scrollable-region-focusable",
    "meta-viewport",
    "avoid-inline-spacing",
    "target-size",
    "tabindex"
  };

  private static final String OPEN_ALL =
      "document.querySelectorAll('details').forEach(each => each.open = true)";

  @ParameterizedTest(name = "{0}")
  @MethodSource("ridgeproof.report.browser.TestPages#names")
  void nobodyIsShutOut(String page, TestPages pages, ReportBrowser browser) {
    browser.open(pages.page(page));
    browser.evaluate(OPEN_ALL);
    assertEquals(List.of(), browser.objections(), "light");
    browser.width(360);
    assertEquals(List.of(), browser.objections(RULES_OF_SIZE), "360 pixels wide");
    browser.media("", true);
    assertEquals(List.of(), browser.objections(RULES_OF_COLOUR), "dark");
  }

  @Test
  void aPageThatShutsPeopleOutIsFoundOut(@TempDir Path folder, ReportBrowser browser)
      throws IOException {
    String page =
        "<!DOCTYPE html><title>t</title><main><img src='data:,'><p style='color:#ddd'>pale</p>";
    browser.open(Files.writeString(folder.resolve("bad.html"), page));
    List<String> found = browser.objections().stream().map(each -> each.split(":")[0]).toList();
    assertTrue(
        found.containsAll(List.of("image-alt", "color-contrast", "html-has-lang")),
        found.toString());
  }
}
