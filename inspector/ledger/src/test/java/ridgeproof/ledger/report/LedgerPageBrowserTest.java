package ridgeproof.ledger.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ridgeproof.ledger.store.LedgerStore;
import ridgeproof.spec.SpecTables;
import ridgeproof.testing.browser.Browser;
import ridgeproof.testing.browser.InstalledChromium;
import ridgeproof.testing.browser.SharedBrowser;

/** The page in a browser: light, dark, on a phone, on paper, and with values that try to act. */
@ExtendWith(LedgerPageBrowserTest.Extension.class)
@Tag("slow")
class LedgerPageBrowserTest {

  private static final Path SCREENSHOTS = Path.of("target/screenshots");
  private static final int TALLEST = 4000;
  private static final int SHEET = 680;
  private static final String MARKUP = "<img src=x onerror=window.acted=1><b>Harbor</b>";

  private static final String CUT =
      """
      const wide = document.documentElement.clientWidth;
      return [...document.body.querySelectorAll('*')].filter(element => {
        if (element.closest('.skip') || element.closest('title')) return false;
        const box = element.getBoundingClientRect();
        return box.width > 0 && (box.left < -1 || box.right > wide + 1);
      }).map(element => element.tagName + '.' + (element.getAttribute('class') || '')).slice(0, 5);
      """;

  @TempDir Path folder;

  /** A browser that opens pages from files. */
  static final class PageBrowser extends Browser {
    PageBrowser(InstalledChromium chromium) throws IOException {
      super(chromium, "document");
    }

    static PageBrowser start(InstalledChromium chromium) {
      try {
        return new PageBrowser(chromium);
      } catch (IOException e) {
        throw new java.io.UncheckedIOException(e);
      }
    }
  }

  static final class Extension extends SharedBrowser<PageBrowser> {
    Extension() {
      super(PageBrowser.class, PageBrowser::start);
    }
  }

  private String page(String name) throws IOException {
    SampleYear year =
        switch (name) {
          case "empty" -> new SampleYear("TIDEWATER");
          case "few" -> new SampleYear("TIDEWATER").with(7);
          case "hostile" -> new SampleYear(MARKUP).with(60);
          default -> new SampleYear("TIDEWATER").with(700);
        };
    Map<String, String> operators = new HashMap<>();
    for (int i = 0; i < 6; i++) {
      operators.put(
          SampleYear.HASH.operator("OPERATOR-" + i),
          name.equals("hostile") ? MARKUP : "OPERATOR-" + i);
    }
    try (LedgerStore store =
        LedgerStore.open(
            "jdbc:sqlite:" + folder.resolve(name + ".db"), SampleYear.HASH.verifier())) {
      store.addAll(year.entries());
      LedgerReport report =
          LedgerReport.of(store, SpecTables.open(), operators, SampleYear.FIRST.plusYears(1));
      Path file = Files.writeString(folder.resolve(name + ".html"), LedgerPage.render(report));
      return file.toUri().toString();
    }
  }

  private static void keep(PageBrowser browser, String page, int width, String view)
      throws IOException {
    Files.createDirectories(SCREENSHOTS);
    long height = browser.number("return document.documentElement.scrollHeight");
    Files.write(
        SCREENSHOTS.resolve("ledger-" + page + "-" + width + view + ".png"),
        browser.screenshot(width, (int) Math.min(height, TALLEST)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"full", "few", "empty", "hostile"})
  void nobodyIsShutOutAndNothingIsCut(String name, PageBrowser browser) throws IOException {
    browser.open(page(name));
    assertEquals(List.of(), browser.objections(), "light");
    keep(browser, name, 1280, "");
    browser.media("", true);
    assertEquals(List.of(), browser.objections("color-contrast"), "dark");
    keep(browser, name, 1280, "-dark");
    browser.width(360);
    assertEquals(360, browser.number("return document.documentElement.scrollWidth"));
    assertEquals(List.of(), browser.texts(CUT), "360 pixels wide");
    assertEquals(List.of(), browser.objections(), "dark, 360 pixels wide");
    keep(browser, name, 360, "-dark");
    browser.media("print", false);
    browser.width(SHEET);
    assertEquals(List.of(), browser.texts(CUT), "on paper");
    keep(browser, name, SHEET, "-print");
  }

  @ParameterizedTest
  @ValueSource(strings = {"full", "hostile"})
  void nothingIsLoadedAndNoValueActs(String name, PageBrowser browser) throws IOException {
    String address = page(name);
    browser.open(address);
    assertEquals(List.of(address), browser.requests());
    assertEquals(List.of(), browser.complaints());
    assertFalse(browser.isTrue("return 'acted' in window"));
    assertEquals(
        0, browser.number("return document.querySelectorAll('img, script, main b').length"));
    if (name.equals("hostile")) {
      assertTrue(browser.text("return document.body.innerText").contains(MARKUP));
    }
  }

  @Test
  void theFullPageTellsTheStory(PageBrowser browser) throws IOException {
    browser.open(page("full"));
    assertEquals(
        List.of(
            "OPERATOR-4: Operator rolls too narrowly",
            "TIDEWATER LS-1 TW-001: Scale of the images does not agree with the stated resolution",
            "TIDEWATER LS-1 TW-002: Spot or scratch on the platen",
            "TIDEWATER LS-1 TW-003: Contrast of the prints changed",
            "TIDEWATER LS-1 TW-001: More dry prints than at other stations in the same season"),
        browser.texts(
            "return [...document.querySelectorAll('.fault h3')].map(h => h.textContent.split(', since')[0])"));
    assertTrue(browser.isTrue("return document.querySelector('.platen .ring') !== null"));
    assertTrue(
        browser.number("return document.querySelectorAll('.levels .dot').length") > 200,
        "a point for each person");
    assertEquals(
        List.of(
            "OPERATOR-4 (this finding)",
            "TIDEWATER LS-1 TW-001 (this finding)",
            "TIDEWATER LS-1 TW-001 (this finding)"),
        browser.texts(
            "return [...document.querySelectorAll('.spread .concerned th')].map(h => h.textContent)"));
    assertTrue(
        browser.number("return document.querySelectorAll('.plot .column').length") >= 10,
        "a column for each number of days");
    assertTrue(
        browser.text("return document.getElementById('recaptures').innerText").contains(" %"));
  }
}
