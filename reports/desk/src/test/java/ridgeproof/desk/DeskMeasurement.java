package ridgeproof.desk;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/**
 * Measures how soon a dropped card shows its rows and its verdict, and whether the page answers
 * while 200 files are examined. It holds no limit, since a loaded machine would break it, and runs
 * only when it is named, as docs/desk.md says.
 */
final class DeskMeasurement {

  private static final int CARDS = 8;
  private static final int WARM = 3;
  private static final int MANY = 200;

  /** Notes when a row first says something, and when it has its verdict. */
  private static final String OBSERVE =
      """
      window.seen = {};
      window.longest = 0;
      new MutationObserver(() => document.querySelectorAll('#rows .row').forEach(row => {
        const name = row.querySelector('.name').textContent.trim();
        const times = window.seen[name] = window.seen[name] || {};
        if (row.dataset.state !== 'unsent') times.row = times.row || performance.now();
        if (row.dataset.state === 'examined') times.verdict = times.verdict || performance.now();
      })).observe(document.getElementById('rows'), {childList: true, subtree: true});
      new PerformanceObserver(list => list.getEntries().forEach(task => {
        window.longest = Math.max(window.longest, task.duration);
      })).observe({entryTypes: ['longtask']});
      """;

  /** When the answer to the latest upload came, which is once all of its bytes are there. */
  private static final String ARRIVED =
      """
      return performance.getEntriesByType('resource').filter(entry => entry.name.endsWith('/files'))
        .map(entry => entry.responseEnd).pop();
      """;

  @Test
  void measure() throws IOException {
    Path folder = Files.createTempDirectory("desk-measurement");
    try (DeskRun desk = DeskRun.open();
        Chromium browser = Chromium.start()) {
      browser.enter(desk.address());
      browser.evaluate(OBSERVE);
      for (int i = 0; i < CARDS; i++) {
        card(browser, folder, "card" + i + ".an2", i >= WARM);
      }
      browser.evaluate("document.getElementById('forget').click()");
      browser.until("return document.querySelectorAll('#rows .row').length === 0");
      many(browser, folder);
    }
  }

  private static void card(Chromium browser, Path folder, String name, boolean told) {
    browser.drop(DeskRun.file(folder, name, numbered("missing-little-finger", name.hashCode())));
    browser.until(
        "return (window.seen[arguments[0]] || {}).verdict !== undefined && performance.getEntriesByType('resource').some(entry => entry.name.endsWith('/files'))",
        name);
    double arrived = decimal(browser, ARRIVED);
    double row = decimal(browser, "return window.seen['" + name + "'].row");
    double verdict = decimal(browser, "return window.seen['" + name + "'].verdict");
    browser.evaluate("performance.clearResourceTimings()");
    if (told) {
      System.out.printf(
          Locale.ROOT,
          "tenprint card: row %.0f ms, verdict %.0f ms after its bytes arrived%n",
          row - arrived,
          verdict - arrived);
    }
  }

  private static void many(Chromium browser, Path folder) {
    Path[] files = new Path[MANY];
    for (int i = 0; i < MANY; i++) {
      files[i] = DeskRun.file(folder, "many" + i + ".an2", numbered("clean-flats", i));
    }
    browser.evaluate("window.longest = 0; window.dropped = performance.now()");
    browser.drop(files);
    browser.until("return document.querySelectorAll('#rows .row').length === 200");
    double rows = decimal(browser, "return performance.now() - window.dropped");
    double slowest = 0;
    while (!browser.isTrue(
        "return document.querySelectorAll('#rows [data-state=examined]').length === 200")) {
      long start = System.nanoTime();
      browser.evaluate("return document.getElementById('summary').textContent");
      slowest = Math.max(slowest, (System.nanoTime() - start) / 1e6);
      pause();
    }
    System.out.printf(
        Locale.ROOT,
        "%d files: all rows after %.0f ms, all verdicts after %.1f s; longest task of the page %.0f ms,"
            + " slowest answer %.0f ms, heap in use %d MB%n",
        MANY,
        rows,
        decimal(browser, "return performance.now() - window.dropped") / 1000,
        decimal(browser, "return window.longest"),
        slowest,
        (Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory()) / 1_000_000);
  }

  private static void pause() {
    try {
      Thread.sleep(250);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private static double decimal(Chromium browser, String script) {
    return ((Number) browser.evaluate(script)).doubleValue();
  }

  /** The story with another control number, so that no two files are the same. */
  private static byte[] numbered(String story, int number) {
    String text = new String(DeskRun.story(story), StandardCharsets.ISO_8859_1);
    String written = String.format(Locale.ROOT, "PILOT-%04d", Math.floorMod(number, 10_000));
    return text.replaceFirst("PILOT-[0-9]{4}", written).getBytes(StandardCharsets.ISO_8859_1);
  }
}
