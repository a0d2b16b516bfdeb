package ridgeproof.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** What a person at a station does, in a real browser. */
@ExtendWith(ChromiumExtension.class)
class DeskBrowserTest {

  private static final String VERDICTS =
      "return [...document.querySelectorAll('#rows .stamp')].map(stamp => stamp.textContent)";

  @TempDir Path folder;

  @Test
  void droppedFilesShowTheirVerdictAndWhatToDoFirst(Chromium browser) {
    try (DeskRun desk = DeskRun.open()) {
      browser.enter(desk.address());
      browser.drop(
          DeskRun.story(folder, "clean-flats"), DeskRun.story(folder, "missing-little-finger"));
      browser.until("return document.querySelectorAll('#rows .row').length === 2");
      browser.until("return document.querySelectorAll('#rows [data-state=examined]').length === 2");
      assertEquals(List.of("HOLD", "READY"), browser.texts(VERDICTS));
      assertEquals(
          "1 READY · 1 HOLD",
          browser.text("return document.getElementById('summary').textContent"));
      assertTrue(
          browser
              .text("return document.querySelector('#rows .hold .step').textContent")
              .contains("little finger"));
      browser.screenshot("desk", 1280, 900);
      browser.click("#rows .hold a.open");
      browser.until(
          "return document.getElementById('report').contentDocument.querySelector('.note') !== null");
      browser.screenshot("file", 1280, 1800);
    }
  }
}
