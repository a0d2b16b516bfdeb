package ridgeproof.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Web Content Accessibility Guidelines 2.1, levels A and AA, as far as a program can tell. */
@InChromium
class AccessibilityBrowserTest {

  private static final String OPEN_ALL =
      "document.querySelectorAll('details').forEach(each => each.open = true)";

  @ParameterizedTest(name = "{0}")
  @MethodSource("ridgeproof.browser.TestPages#names")
  void nobodyIsShutOut(String page, TestPages pages, Browser browser) {
    browser.open(pages.page(page));
    browser.evaluate(OPEN_ALL);
    assertEquals(List.of(), browser.objections(), "light");
    browser.media("", true);
    assertEquals(List.of(), browser.objections(), "dark");
    browser.width(360);
    assertEquals(List.of(), browser.objections(), "dark, 360 pixels wide");
  }

  @Test
  void aPageThatShutsPeopleOutIsFoundOut(@TempDir Path folder, Browser browser) throws IOException {
    String page =
        "<!DOCTYPE html><title>t</title><main><img src='data:,'><p style='color:#ddd'>pale</p>";
    browser.open(Files.writeString(folder.resolve("bad.html"), page));
    List<String> found = browser.objections().stream().map(each -> each.split(":")[0]).toList();
    assertTrue(
        found.containsAll(List.of("image-alt", "color-contrast", "html-has-lang")),
        found.toString());
  }
}
