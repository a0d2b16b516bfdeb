package ridgeproof.archive.question;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import ridgeproof.testing.browser.Browser;
import ridgeproof.testing.browser.InstalledChromium;
import ridgeproof.testing.browser.SharedBrowser;

/** The page of an archive in a browser: it asks for nothing else, and shuts nobody out. */
@ExtendWith(ArchivePageBrowserTest.Chromium.class)
class ArchivePageBrowserTest {

  @TempDir Path folder;

  private Path page() throws IOException {
    KnownTables tables = new KnownTables();
    tables.addStationThatDrifts();
    tables.finding("1-0", "RP-IMG-004");
    tables.views();
    ArchiveAnswers answers = ArchiveAnswers.of(tables.spark(), KnownTables.DAY.plusYears(1));
    return Files.writeString(
        folder.resolve("archive.html"), ArchivePage.render(answers, KnownTables.names()));
  }

  @Test
  void thePageAsksForNothingElseAndShutsNobodyOut(PageBrowser browser) throws IOException {
    String address = page().toUri().toString();
    browser.open(address);
    List<String> asked = browser.requests();
    assertTrue(
        asked.contains(address)
            && asked.stream().allMatch(each -> each.equals(address) || each.startsWith("data:")),
        asked.toString());
    assertEquals(List.of(), browser.complaints());
    assertTrue(browser.number("return document.querySelectorAll('svg').length") > 0, "plots");
    assertEquals(List.of(), browser.objections(), "light");
    browser.media("", true);
    assertEquals(List.of(), browser.objections("color-contrast"), "dark");
    browser.width(360);
    assertEquals(
        List.of(),
        browser.objections("scrollable-region-focusable", "meta-viewport", "target-size"),
        "360 pixels wide");
    assertTrue(
        browser.isTrue(
            "return document.documentElement.scrollWidth <= document.documentElement.clientWidth"),
        "no wider than a phone");
    browser.media("", false);
    browser.width(1280);
    Files.write(Path.of("target/archive-page.png"), browser.screenshot(1280, 2400));
  }

  /** A browser that opens pages from files. */
  static final class PageBrowser extends Browser {

    private PageBrowser(InstalledChromium chromium) throws IOException {
      super(chromium, "{include: [['html']]}");
    }

    static PageBrowser start(InstalledChromium chromium) {
      try {
        return new PageBrowser(chromium);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  /** The one browser of a run. */
  static final class Chromium extends SharedBrowser<PageBrowser> {
    Chromium() {
      super(PageBrowser.class, PageBrowser::start);
    }
  }
}
