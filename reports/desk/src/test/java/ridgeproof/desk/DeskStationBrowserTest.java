package ridgeproof.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import ridgeproof.corpus.fault.HostileCard;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.gate.FolderWatch;
import ridgeproof.ledger.health.StationHealth;

/** What comes from the station and from the bureau: watched folders, responses, its health. */
@ExtendWith(ChromiumExtension.class)
@Tag("slow")
class DeskStationBrowserTest {

  private static final String READY = "clean-flats";
  private static final String HOLD = "missing-little-finger";
  private static final String REPORT = "document.getElementById('report').contentDocument";
  private static final int FILES = 32;

  @TempDir Path folder;
  private DeskRun desk = DeskRun.open();

  @AfterEach
  void close() {
    desk.close();
  }

  private void open(java.util.function.Consumer<DeskRun.Settings> change) {
    desk.close();
    desk = DeskRun.open(change);
  }

  /** Without ridges, which tell of fingers and not of stations. */
  private static void quick(DeskRun.Settings settings) {
    settings.options =
        () ->
            ExaminationOptions.standard()
                .withToday(DeskRun.TODAY)
                .withDepth(Depth.IMAGES)
                .withPlaten(true);
  }

  private static void untilExamined(Chromium browser, int files) {
    browser.until(
        "return document.querySelectorAll('#rows [data-state=examined]').length === arguments[0]",
        files);
  }

  private void drop(Chromium browser, List<Path> files) {
    browser.enter(desk.address());
    browser.drop(files.toArray(Path[]::new));
    untilExamined(browser, files.size());
  }

  @Test
  void whatAppearsInTheWatchedFolderIsExaminedOnceItHasStoppedGrowing(Chromium browser)
      throws IOException {
    Path watched = Files.createDirectories(folder.resolve("export"));
    DeskRun.story(watched, "date-turned-round"); // there before the desk was opened
    open(settings -> settings.watch = new FolderWatch(watched, Duration.ofSeconds(5), 10_000_000));
    browser.enter(desk.address());
    assertTrue(
        browser.text("return document.body.textContent").contains("watched folder"),
        "the page says that a folder is watched");
    byte[] card = DeskRun.story(READY);
    Path growing = watched.resolve("card.an2");
    Files.write(growing, java.util.Arrays.copyOf(card, card.length / 2));
    Path whole = folder.resolve("whole.an2");
    Files.write(whole, DeskRun.story(HOLD));
    Files.move(whole, watched.resolve("whole.an2"), StandardCopyOption.ATOMIC_MOVE);
    Files.write(watched.resolve("other.an2.part"), card);
    for (int from = card.length / 2; from < card.length; from += card.length / 20) {
      browser.pause(Duration.ofMillis(200));
      int end = Math.min(card.length, from + card.length / 20);
      Files.write(
          growing, java.util.Arrays.copyOfRange(card, from, end), StandardOpenOption.APPEND);
    }
    untilExamined(browser, 2);
    assertEquals(
        List.of("card.an2 READY", "whole.an2 HOLD"),
        browser.texts(
            """
            return [...document.querySelectorAll('#rows .row')].map(row =>
              row.querySelector('a.open').textContent.trim() + ' ' + row.querySelector('.stamp').textContent).sort()
            """));
    assertEquals(
        List.of("card.an2", "date-turned-round.an2", "other.an2.part", "whole.an2"),
        filesIn(watched),
        "nothing is moved");
  }

  private static List<String> filesIn(Path folder) throws IOException {
    try (var files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void aClickOnAPictureInTheReportShowsThatPrintLarge(Chromium browser) {
    drop(browser, List.of(DeskRun.story(folder, READY)));
    browser.click("#rows a.open");
    browser.until("return " + REPORT + ".querySelectorAll('.picture > svg').length > 1");
    browser.until(
        "return " + REPORT + ".querySelectorAll('.picture > svg')[1].style.cursor === 'zoom-in'");
    String heading =
        browser.text(
            "return " + REPORT + ".querySelectorAll('.picture')[1].querySelector('a').textContent");
    browser.clickInFrame("#report", ".picture > svg", 1);
    browser.until("return document.getElementById('viewer').open");
    browser.until("return document.getElementById('large').naturalWidth > 200");
    String record = heading.replaceAll("\\D+", " ").strip().split(" ")[0];
    assertTrue(
        browser.text("return document.getElementById('large').src").endsWith("/images/" + record),
        heading);
    assertEquals(
        browser.text("return document.getElementById('large').alt"),
        browser.text("return document.getElementById('viewer-title').textContent"));
  }

  @Test
  void aDroppedResponseFindsItsSubmissionAndSaysWhatItMeans(Chromium browser) {
    String story = "date-turned-round";
    open(DeskStationBrowserTest::quick);
    drop(browser, List.of(DeskRun.story(folder, story), StationFiles.rejection(folder, story)));
    browser.evaluate(
        "[...document.querySelectorAll('#rows a.open')].find(a => a.textContent.includes('response')).click()");
    browser.until("return document.querySelector('a[href*=\"rejected?response\"]') !== null");
    browser.click("a[href*='rejected?response']");
    browser.until("return document.querySelector('.answer .conclusion') !== null");
    String name = story + ".an2";
    assertEquals(
        "The response refers to " + name + ", which is on the desk.",
        browser.text("return document.getElementById('refers').textContent"));
    assertEquals(
        name,
        browser.text("return document.getElementById('file').selectedOptions[0].textContent"));
    String answer = browser.text("return document.getElementById('answers').textContent");
    assertTrue(answer.contains("The message agrees with these findings in " + name), answer);
    assertEquals(List.of(), browser.objections());
    browser.screenshot("response", 1280, 1000);
  }

  @Test
  void aResponseWhoseSubmissionIsNotOnTheDeskSaysSo(Chromium browser) {
    open(DeskStationBrowserTest::quick);
    drop(browser, List.of(StationFiles.rejection(folder, READY)));
    browser.click("#rows a.open");
    browser.click("a[href*='rejected?response']");
    browser.until("return document.querySelector('.answer') !== null");
    assertTrue(
        browser
            .text("return document.getElementById('refers').textContent")
            .contains("is not on the desk"));
  }

  @Test
  void aHostileCardActsNowhereOnTheDesk(Chromium browser) throws IOException {
    browser.enter(desk.address());
    Path card = DeskRun.file(folder, "%3Cimg src=x onerror=window.x=1%3E.an2", HostileCard.bytes());
    Path named = folder.resolve("<img src=x onerror=window." + HostileCard.MARKER + "=1>.an2");
    Files.copy(card, named);
    browser.drop(card, named);
    untilExamined(browser, 2);
    assertHarmless(browser, "the list");
    browser.width(360);
    assertTrue(browser.isTrue("return document.documentElement.scrollWidth <= 360"));
    browser.width(1280);
    browser.click("#rows a.open");
    browser.until("return " + REPORT + ".querySelector('main') !== null");
    assertHarmless(browser, "the report");
    browser.click("#personal");
    browser.until("return " + REPORT + ".body.textContent.includes('<script>window.')");
    assertHarmless(browser, "the report with biographic data");
    browser.go(browser.address() + "/ticket");
    browser.until("return document.getElementById('ticket-text') !== null");
    assertHarmless(browser, "the ticket");
    for (String page : List.of("/rejected", "/shift", "/")) {
      browser.go(desk.base() + page);
      assertHarmless(browser, page);
    }
    browser.until("return document.querySelectorAll('#rows .pick').length === 2");
    browser.click("#rows .pick");
    browser.click("#rows li:last-child .pick");
    browser.click("#compare");
    browser.until("return " + REPORT + ".querySelector('main') !== null");
    assertHarmless(browser, "the comparison");
  }

  private void assertHarmless(Chromium browser, String where) {
    assertFalse(browser.isTrue("return '" + HostileCard.MARKER + "' in window"), where);
    assertFalse(
        browser.isTrue(
            "const frame = document.getElementById('report'); return frame !== null && '"
                + HostileCard.MARKER
                + "' in frame.contentWindow"),
        where);
    assertEquals(
        0,
        browser.number(
            "return document.querySelectorAll('[onerror], [onload], img[src=x], main script').length"),
        where);
    String origin = desk.address().replaceAll("(http://[^/]+)/.*", "$1/");
    assertEquals(
        List.of(),
        browser.requests().stream()
            .filter(address -> !address.startsWith(origin) && !address.startsWith("data:"))
            .filter(address -> !address.startsWith("about:"))
            .toList(),
        where);
  }

  @Test
  void unevenLightIsSeenInAFewFiles(Chromium browser) {
    open(DeskStationBrowserTest::quick);
    drop(browser, StationFiles.of(folder, 6, 0, (gray, x, width) -> gray - 40.0 * x / width));
    browser.click("nav a[href$=shift]");
    browser.until("return document.querySelector('.platens svg') !== null");
    List<String> warnings = warnings(browser);
    assertEquals(1, warnings.size(), warnings.toString());
    assertTrue(warnings.get(0).startsWith("The light is uneven"), warnings.get(0));
    assertTrue(browser.isTrue("return document.querySelector('.platens .dark') !== null"));
    assertTrue(
        browser
            .text("return document.querySelector('.station').textContent")
            .contains("is judged from 30 files"));
    assertEquals(List.of(), browser.objections());
    browser.screenshot("shift-uneven", 1280, 1500);
  }

  private static List<String> warnings(Chromium browser) {
    return browser.texts(
        "return [...document.querySelectorAll('.station .warning')].map(w => w.textContent.trim())");
  }

  @Test
  void withoutADriftOfGrayNothingIsSaidOfAShift(Chromium browser) {
    open(DeskStationBrowserTest::quick);
    drop(browser, StationFiles.of(folder, FILES, FILES, (gray, x, width) -> gray));
    browser.click("nav a[href$=shift]");
    browser.until("return document.querySelector('.platens svg') !== null");
    assertEquals(List.of(), warnings(browser));
    String station = browser.text("return document.querySelector('.station').textContent");
    assertTrue(station.contains("No drift"), station);
    assertTrue(station.contains("Station TIDEWATER LS-1 A"), station);
  }

  @Test
  void aDriftOfGrayIsFoundOverAShift(Chromium browser) {
    open(DeskStationBrowserTest::quick);
    drop(browser, StationFiles.of(folder, FILES, FILES / 2, (gray, x, width) -> gray * 0.9));
    browser.click("nav a[href$=shift]");
    browser.until("return document.querySelector('.fault .plot canvas') !== null");
    List<String> warnings = warnings(browser);
    assertTrue(
        warnings.get(0).startsWith("Gray level of the background changed, since 2025-"),
        warnings.toString());
    assertEquals(List.of(), browser.complaints());
    assertEquals(List.of(), browser.objections());
    browser.screenshot("shift-drift", 1280, 2000);
    browser.dark(true);
    assertEquals(List.of(), browser.objections());
    browser.screenshot("shift-drift-dark", 1280, 2000);
    browser.width(360);
    browser.reload();
    browser.until("return document.querySelector('.fault .plot canvas') !== null");
    assertTrue(browser.isTrue("return document.documentElement.scrollWidth <= 360"));
    browser.screenshot("shift-drift-phone", 360, 2400);
  }

  @Test
  void theStationsOfALedgerAreJudgedWithoutAFile(Chromium browser) {
    StationHealth health = LedgerYear.withTwoFaults(folder);
    open(settings -> settings.ledger = () -> Optional.of(health));
    browser.enter(desk.address());
    browser.click("nav a[href$=shift]");
    browser.until("return document.querySelector('.ledger .map .ring') !== null");
    List<String> warnings = warnings(browser);
    assertEquals(2, warnings.size(), warnings.toString());
    assertTrue(
        warnings.stream()
            .anyMatch(
                warning ->
                    warning.startsWith(
                        "TIDEWATER LS-1 TW-002: Spot or scratch on the platen, since 2025-")),
        warnings.toString());
    assertEquals(
        List.of("TIDEWATER LS-1 TW-001 (this finding)", "TIDEWATER LS-1 TW-002"),
        browser.texts(
            "return [...document.querySelectorAll('.spread tbody th')].map(h => h.textContent)"));
    assertTrue(
        browser
            .text("return document.querySelector('.ledger').textContent")
            .contains("TIDEWATER LS-1 TW-001: the last"));
    assertEquals(List.of(), browser.complaints());
    assertEquals(List.of(), browser.objections());
    browser.screenshot("shift-ledger", 1280, 1200);
    browser.dark(true);
    assertEquals(List.of(), browser.objections());
    browser.screenshot("shift-ledger-dark", 1280, 1200);
  }

  @Test
  void aLedgerThatCannotBeReadIsSaidSo(Chromium browser) {
    open(settings -> settings.ledger = Optional::empty);
    browser.enter(desk.address());
    browser.click("nav a[href$=shift]");
    browser.until("return document.querySelector('.ledger') !== null");
    assertTrue(
        browser
            .text("return document.querySelector('.ledger').textContent")
            .contains("The ledger cannot be read now."));
  }
}
