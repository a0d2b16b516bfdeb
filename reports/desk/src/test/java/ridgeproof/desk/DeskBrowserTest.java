package ridgeproof.desk;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;

/** What a person at a station does, in a real browser. */
@Tag("slow")
@ExtendWith(ChromiumExtension.class)
class DeskBrowserTest {

  private static final String HOLD = "missing-little-finger";
  private static final String READY = "clean-flats";
  private static final String REPORT = "document.getElementById('report').contentDocument";

  @TempDir Path folder;
  private DeskRun desk;

  @BeforeEach
  void open() {
    desk = DeskRun.open();
  }

  @AfterEach
  void close() {
    desk.close();
  }

  private void drop(Chromium browser, String... stories) {
    browser.enter(desk.address());
    Path[] files =
        List.of(stories).stream().map(name -> DeskRun.story(folder, name)).toArray(Path[]::new);
    browser.drop(files);
    untilExamined(browser, files.length);
  }

  private static void untilExamined(Chromium browser, int files) {
    browser.until(
        "return document.querySelectorAll('#rows [data-state=examined]').length === arguments[0]",
        files);
  }

  private void openReport(Chromium browser) {
    browser.click("#rows a.open");
    browser.until("return " + REPORT + ".querySelector('main') !== null");
  }

  @Test
  void droppedFilesShowTheirVerdictAndWhatToDoFirst(Chromium browser) {
    drop(browser, READY, HOLD);
    assertEquals(
        List.of("HOLD", "READY"),
        browser.texts(
            "return [...document.querySelectorAll('#rows .stamp')].map(s => s.textContent)"));
    assertEquals(
        "1 READY · 1 HOLD", browser.text("return document.getElementById('summary').textContent"));
    assertTrue(
        browser
            .text("return document.querySelector('#rows .hold .step').textContent")
            .contains("little finger"));
    browser.screenshot("desk", 1280, 900);
    assertEquals(List.of(), browser.complaints());
    assertEquals(List.of(), browser.objections());
    browser.dark(true);
    assertEquals(List.of(), browser.objections());
    browser.screenshot("desk-dark", 1280, 900);
    browser.dark(false);
    browser.width(360);
    assertTrue(browser.isTrue("return document.documentElement.scrollWidth <= 360"));
    assertEquals(List.of(), browser.objections());
    browser.screenshot("desk-phone", 360, 1000);
  }

  @Test
  void chosenFilesAndAFolderAreExaminedToo(Chromium browser) throws IOException {
    browser.enter(desk.address());
    browser.choose("#choose-files", DeskRun.story(folder, READY));
    untilExamined(browser, 1);
    Path shift = Files.createDirectories(folder.resolve("shift"));
    DeskRun.file(shift, "note.txt", "tide table".getBytes(StandardCharsets.UTF_8));
    browser.drop(shift);
    untilExamined(browser, 2);
    assertEquals(
        "UNREADABLE", browser.text("return document.querySelector('#rows .stamp').textContent"));
  }

  @Test
  void theReportOfAFileHasLivePrintsOverlaysAndMaskedData(Chromium browser) {
    drop(browser, HOLD);
    openReport(browser);
    browser.screenshot("file", 1280, 1500);
    assertEquals(List.of(), browser.objections());
    browser.press("n");
    browser.until("return document.getElementById('said').textContent.startsWith('Problem 1 of ')");
    browser.press("o");
    browser.until("return " + REPORT + ".querySelectorAll('[id^=\"show-\"]:checked').length > 0");
    String name = "SPECIMEN";
    assertFalse(browser.text("return " + REPORT + ".body.textContent").contains(name));
    browser.click("#personal");
    browser.until("return " + REPORT + ".body.textContent.includes(arguments[0])", name);
    browser.click("#personal");
    browser.until("return !" + REPORT + ".body.textContent.includes(arguments[0])", name);
    browser.evaluate("scrollTo(0, 0)");
    browser.click(".prints-large summary");
    browser.click(".print");
    browser.until("return document.getElementById('large').naturalWidth > 200");
    long before = browser.number("return document.getElementById('large').width");
    browser.press("+");
    browser.until("return document.getElementById('large').width > arguments[0]", before);
    browser.press("o");
    browser.until("return document.getElementById('large').src.endsWith('overlay=yes')");
    browser.until("return document.getElementById('large').complete");
    assertEquals(List.of(), browser.objections());
    browser.screenshot("viewer", 1280, 900);
    browser.press(Keys.ESCAPE);
    browser.until("return !document.getElementById('viewer').open");
  }

  @Test
  void twoFilesAreCompared(Chromium browser) {
    drop(browser, READY, "date-turned-round");
    browser.until("return document.querySelector('.suggestions a') !== null");
    browser.click("#rows .pick");
    browser.click("#rows li:last-child .pick");
    browser.click("#compare");
    browser.until("return " + REPORT + ".querySelector('main') !== null");
    assertTrue(
        browser.text("return " + REPORT + ".body.textContent").contains("Send"),
        "each finger says which capture to send");
    assertEquals(List.of(), browser.objections());
    browser.screenshot("compare", 1280, 1500);
  }

  @Test
  void aTicketIsShownEditedAndSaved(Chromium browser) {
    drop(browser, HOLD);
    browser.click("#rows a[href$=ticket]");
    browser.until("return document.getElementById('ticket-text') !== null");
    browser.type("#note", "Tried three times <b>today</b>.");
    browser.until(
        "return document.getElementById('ticket-text').textContent.includes('Tried three times <b>today</b>.')");
    String ticket = browser.text("return document.getElementById('ticket-text').textContent");
    assertTrue(ticket.contains("Safe copy"), ticket);
    assertFalse(ticket.contains("SPECIMEN"), ticket);
    assertEquals(List.of(), browser.objections());
    browser.screenshot("ticket", 1280, 1500);
    browser.click("#copy");
    browser.until(
        "return !document.getElementById('ticket-text').textContent.includes('Safe copy')");
    browser.click("#copy-text");
    browser.until("return document.getElementById('copied').textContent !== ''");
    String saved =
        browser.text(
            """
            const form = new FormData(document.querySelector('.ticket-form'));
            const request = new XMLHttpRequest();
            request.open('POST', document.querySelector('.ticket-form').action, false);
            request.send(new URLSearchParams(form));
            return request.getResponseHeader('Content-Disposition') + request.responseText;
            """);
    assertTrue(saved.startsWith("attachment; filename=\"ridgeproof-ticket.txt\""), saved);
    assertTrue(saved.contains("Tried three times"), saved);
  }

  @Test
  void aRejectionIsExplainedAndMatchedWithAFinding(Chromium browser) {
    drop(browser, "date-turned-round");
    browser.click("nav a[href$=rejected]");
    browser.type("#message", "E0002 2.022 invalid value");
    browser.evaluate("document.getElementById('file').selectedIndex = 1");
    browser.click("form.stacked button");
    browser.until("return document.querySelector('.answer .conclusion') !== null");
    String answer = browser.text("return document.getElementById('answers').textContent");
    assertTrue(answer.contains("Value is not valid") && answer.contains("RP-FLD-008"), answer);
    assertEquals(List.of(), browser.objections());
    browser.screenshot("rejected", 1280, 1000);
  }

  @Test
  void theStationIsCheckedBeforeAShift(Chromium browser) {
    drop(browser, READY, HOLD);
    browser.click("nav a[href$=shift]");
    browser.until("return document.querySelector('.platens svg') !== null");
    browser.until("return document.querySelectorAll('.plot canvas').length > 0");
    assertEquals(List.of(), browser.complaints());
    assertEquals(List.of(), browser.objections());
    browser.screenshot("shift", 1280, 1500);
    browser.click("nav a[href$=help]");
    browser.until("return document.querySelectorAll('.words svg').length >= 5");
    assertEquals(List.of(), browser.objections());
    browser.screenshot("help", 1280, 1400);
    browser.width(360);
    assertTrue(browser.isTrue("return document.documentElement.scrollWidth <= 360"));
  }

  @Test
  void theKeyboardAloneIsEnough(Chromium browser) {
    drop(browser, READY, HOLD);
    browser.evaluate("document.activeElement.blur()");
    browser.tabTo("#choose-files");
    browser.tabTo("#rows a.open");
    browser.press(Keys.ARROW_DOWN);
    assertTrue(
        browser.isTrue("return document.activeElement.matches('#rows li:nth-child(2) a.open')"));
    browser.press(Keys.ARROW_UP);
    browser.press(Keys.ENTER);
    browser.until("return document.getElementById('report') !== null");
    browser.until("return " + REPORT + ".querySelector('main') !== null");
    browser.press("n");
    browser.until("return document.getElementById('said').textContent.startsWith('Problem 1')");
    browser.evaluate("document.body.focus()");
    browser.tabTo("nav a[href$=help]");
    browser.press(Keys.ENTER);
    browser.until("return document.querySelector('.words') !== null");
  }

  @Test
  void nothingIsAskedOfAnotherOrigin(Chromium browser) {
    drop(browser, READY);
    openReport(browser);
    browser.click("nav a[href$=shift]");
    browser.until("return document.querySelector('.platens svg') !== null");
    String origin = desk.address().replaceAll("(http://[^/]+)/.*", "$1/");
    List<String> others =
        browser.requests().stream()
            .filter(address -> !address.startsWith(origin) && !address.startsWith("data:"))
            .filter(address -> !address.startsWith("about:"))
            .toList();
    assertEquals(List.of(), others);
    assertEquals("{}", browser.text("return JSON.stringify({...localStorage, ...sessionStorage})"));
  }

  @Test
  void aReloadInTheMiddleLosesNothing(Chromium browser) {
    browser.enter(desk.address());
    browser.drop(DeskRun.story(folder, READY), DeskRun.story(folder, HOLD));
    browser.until("return document.querySelectorAll('#rows .row:not(.unsent)').length === 2");
    browser.reload();
    untilExamined(browser, 2);
    assertEquals(
        "1 READY · 1 HOLD", browser.text("return document.getElementById('summary').textContent"));
  }

  @Test
  void aClosedDeskSaysSoAndARemovedFileIsGone(Chromium browser) {
    drop(browser, READY);
    String address = browser.text("return document.querySelector('#rows a.open').href");
    browser.click("#rows .remove");
    browser.until("return document.querySelectorAll('#rows .row').length === 0");
    assertTrue(
        browser.isTrue(
            "const r = new XMLHttpRequest(); r.open('GET', arguments[0], false); r.send(); return r.status === 404",
            address));
    browser.click("#stop");
    browser.accept();
    browser.until("return document.getElementById('stopped').textContent.includes('was closed')");
    browser.screenshot("closed", 1280, 900);
  }

  @Test
  void whatTheGateHoldsIsReleasedOnThePage(Chromium browser) throws IOException {
    desk.close();
    String reason = "Three attempts gave the same result";
    desk = DeskRun.open(settings -> settings.gate = DeskRun.gate(folder, reason));
    browser.enter(desk.address());
    DeskRun.story(folder.resolve("from"), HOLD);
    browser.click("nav a[href$=gate]");
    browser.until("return document.querySelector('#gate .row summary') !== null");
    browser.click("#gate summary");
    browser.type("#gate select", reason);
    browser.type("#gate input[name=by]", "Harbor Master");
    assertEquals(List.of(), browser.objections());
    browser.screenshot("gate", 1280, 1000);
    browser.click("#gate form button");
    browser.until("return document.getElementById('gate-said').textContent.startsWith('Released')");
    assertArrayEquals(
        DeskRun.story(HOLD), Files.readAllBytes(folder.resolve("ready").resolve(HOLD + ".an2")));
  }
}
