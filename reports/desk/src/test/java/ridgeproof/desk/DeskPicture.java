package ridgeproof.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Makes the picture of the README when it is named: four stories on a desk. */
final class DeskPicture {

  @Test
  void makeThePicture() throws IOException {
    Path folder = Files.createTempDirectory("desk-picture");
    List<String> stories =
        List.of("clean-flats", "narrow-roll", "missing-little-finger", "date-turned-round");
    try (DeskRun desk = DeskRun.open();
        Chromium browser = Chromium.start()) {
      browser.enter(desk.address());
      for (String story : stories) {
        browser.drop(DeskRun.story(folder, story));
        browser.until(
            "return document.querySelectorAll('#rows [data-state=examined]').length === arguments[0]",
            stories.indexOf(story) + 1);
      }
      browser.evaluate("document.activeElement.blur()");
      browser.screenshot("desk-readme", 1280, 794);
    }
  }
}
