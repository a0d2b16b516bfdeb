package ridgeproof.report.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
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
import ridgeproof.corpus.fault.HostileCard;

/** A page that is opened from a disk stands alone, needs no script and runs none of a value. */
@Tag("slow")
@InChromium
class SelfContainedPageBrowserTest {

  private static final String WORDS = "return document.body.innerText";
  private static final String MARKER = "return '" + HostileCard.MARKER + "' in window";

  @ParameterizedTest(name = "{0}")
  @MethodSource("ridgeproof.report.browser.TestPages#names")
  void aPageLoadsNothingButItselfAndNothingIsRefused(
      String page, TestPages pages, ReportBrowser browser) {
    Path file = pages.page(page);
    browser.open(file);
    List<String> foreign =
        browser.requests().stream()
            .filter(url -> !url.startsWith("data:") && !url.startsWith("blob:"))
            .toList();
    assertEquals(List.of(file.toUri().toString()), foreign);
    assertEquals(List.of(), browser.complaints());
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("ridgeproof.report.browser.TestPages#names")
  void aPageSaysTheSameWithoutScripts(String page, TestPages pages, ReportBrowser browser) {
    browser.open(pages.page(page));
    String words = browser.text(WORDS);
    assertTrue(words.contains("Ridgeproof") || words.contains("RIDGEPROOF"), words);
    browser.allowScripts(false);
    browser.reload();
    assertEquals(words, browser.text(WORDS));
    browser.allowScripts(true);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("ridgeproof.report.browser.TestPages#hostileNames")
  void aValueStaysText(String page, TestPages pages, ReportBrowser browser) {
    browser.open(pages.page(page));
    assertFalse(browser.isTrue(MARKER));
    assertEquals(
        0, browser.number("return document.querySelectorAll('script, iframe, base, link').length"));
    assertEquals(
        0,
        browser.number("return document.querySelectorAll('[onload], [onerror], [style]').length"));
    assertEquals(
        "false",
        browser.text(
            "return /[\\u0000-\\u0008\\u202a-\\u202e\\u2066-\\u2069\\u200e\\u200f\\u061c]/"
                + ".test(document.documentElement.textContent)"));
    assertTrue(browser.text(WORDS).contains("<script>window."), "the value is there as text");
  }

  @Test
  void aPageThatLoadsBreaksItsPolicyOrRunsAScriptIsFoundOut(
      @TempDir Path folder, ReportBrowser browser) throws IOException {
    String address = "http://127.0.0.1:9/pilot.png";
    Path loading = Files.writeString(folder.resolve("loading.html"), "<img src='" + address + "'>");
    browser.open(loading);
    assertTrue(browser.requests().contains(address));
    Path refused =
        Files.writeString(
            folder.resolve("refused.html"),
            "<meta http-equiv=Content-Security-Policy content=\"default-src 'none'\"><style>p{}</style>");
    browser.open(refused);
    assertEquals(1, browser.complaints().size());
    Path running = Files.writeString(folder.resolve("running.html"), HostileCard.VALUES.get(0));
    browser.open(running);
    assertTrue(browser.isTrue(MARKER));
  }
}
