package ridgeproof.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** A desk whose process is killed, and what it leaves behind. */
@ExtendWith(ChromiumExtension.class)
@Tag("slow")
class DeskEndBrowserTest {

  @TempDir Path folder;

  private Process start() throws IOException {
    Path temporary = Files.createDirectories(folder.resolve("tmp"));
    return new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-XX:+UseSerialGC",
            "-Djava.io.tmpdir=" + temporary,
            "-cp",
            System.getProperty("java.class.path"),
            DeskProcess.class.getName())
        .redirectError(ProcessBuilder.Redirect.INHERIT)
        .start();
  }

  @Test
  void aKilledDeskIsToldOnThePageAndLeavesNothingOnDisk(Chromium browser) throws Exception {
    Path card = DeskRun.story(folder, "clean-flats");
    Process process = start();
    try {
      browser.enter(process.inputReader().readLine());
      browser.drop(card);
      browser.until("return document.querySelectorAll('#rows .row:not(.unsent)').length === 1");
      process.destroyForcibly().waitFor();
      browser.until(
          "return document.getElementById('stopped').textContent.includes('has stopped')");
      assertTrue(browser.isTrue("return !document.getElementById('stopped').hidden"));
      browser.screenshot("killed", 1280, 900);
    } finally {
      process.destroyForcibly();
    }
    // Apart from what Java itself tells other tools of a running process.
    assertEquals(List.of(), filesLeft());
  }

  @Test
  void filesThatAreOpenedLeaveNothingOnDisk(Chromium browser) throws Exception {
    Path card = DeskRun.story(folder, "clean-flats");
    Process process = start();
    try {
      browser.enter(process.inputReader().readLine());
      browser.drop(card);
      browser.until("return document.querySelector('#rows [data-state=examined]') !== null");
      browser.click("#rows a.open");
      browser.until(
          "return document.getElementById('report').contentDocument.querySelector('main') !== null");
      assertEquals(List.of(), filesLeft());
    } finally {
      process.destroyForcibly();
    }
  }

  private List<String> filesLeft() throws IOException {
    try (Stream<Path> files = Files.walk(folder.resolve("tmp"))) {
      return files
          .filter(Files::isRegularFile)
          .map(Path::toString)
          .filter(name -> !name.contains("hsperfdata"))
          .toList();
    }
  }
}
