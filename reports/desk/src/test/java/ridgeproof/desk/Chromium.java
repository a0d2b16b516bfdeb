package ridgeproof.desk;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.locks.LockSupport;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.ScriptTimeoutException;
import org.openqa.selenium.WebDriverException;
import org.openqa.selenium.WindowType;
import ridgeproof.testing.browser.Browser;
import ridgeproof.testing.browser.InstalledChromium;

/** A browser in front of a desk. */
final class Chromium extends Browser {

  private static final Duration PATIENCE = Duration.ofSeconds(90);
  private static final Duration PAUSE = Duration.ofMillis(50);
  private static final String PAGE_TEXT = "return document.body.innerText.slice(0, 2000)";

  private Chromium(InstalledChromium chromium) throws IOException {
    super(chromium, "document");
    driver.manage().timeouts().scriptTimeout(PATIENCE);
  }

  static Chromium start(InstalledChromium chromium) {
    try {
      return new Chromium(chromium);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** For what is run by its name, outside of the tests of a build. */
  static Chromium start() {
    return start(
        InstalledChromium.findOrInstall(Path.of("target/chromium-install.log")).orElseThrow());
  }

  /** Lets the browser in and waits for the list. */
  void enter(String address) {
    try {
      open(address);
    } catch (ScriptTimeoutException e) {
      // The entrance leads on by itself, perhaps before it was painted.
    }
    until("return document.getElementById('rows') !== null && document.readyState === 'complete'");
  }

  void go(String address) {
    driver.get(address);
  }

  String address() {
    return driver.getCurrentUrl();
  }

  void newTab() {
    driver.switchTo().newWindow(WindowType.TAB);
  }

  void dark(boolean dark) {
    media("", dark);
  }

  /** Waits until a script answers true. */
  void until(String script, Object... arguments) {
    long end = System.nanoTime() + PATIENCE.toNanos();
    while (System.nanoTime() < end) {
      if (holds(script, arguments)) {
        return;
      }
      LockSupport.parkNanos(PAUSE.toNanos());
    }
    throw new AssertionError("never true: " + script + "\non " + text(PAGE_TEXT));
  }

  /** A page that is just being replaced holds nothing. */
  private boolean holds(String script, Object... arguments) {
    try {
      return isTrue(script, arguments);
    } catch (WebDriverException e) {
      return false;
    }
  }

  /** Drops files from the file manager on the middle of the page. */
  void drop(Path... files) {
    List<String> paths = new ArrayList<>();
    for (Path file : files) {
      paths.add(file.toAbsolutePath().toString());
    }
    Map<String, Object> data = Map.of("items", List.of(), "files", paths, "dragOperationsMask", 1);
    for (String kind : List.of("dragEnter", "dragOver", "drop")) {
      driver.executeCdpCommand(
          "Input.dispatchDragEvent", Map.of("type", kind, "x", 400, "y", 300, "data", data));
    }
  }

  /** Chooses files in the control of that selector. */
  void choose(String selector, Path... files) {
    driver
        .findElement(By.cssSelector(selector))
        .sendKeys(String.join("\n", List.of(files).stream().map(Path::toString).toList()));
  }

  /** Scrolls there first, unlike a mouse. */
  @Override
  public void click(String selector) {
    driver.findElement(By.cssSelector(selector)).click();
  }

  /** Clicks on the element of that number within a frame, as a mouse does. */
  void clickInFrame(String frame, String selector, int number) {
    driver.switchTo().frame(driver.findElement(By.cssSelector(frame)));
    try {
      driver.findElements(By.cssSelector(selector)).get(number).click();
    } finally {
      driver.switchTo().defaultContent();
    }
  }

  void pause(Duration time) {
    LockSupport.parkNanos(time.toNanos());
  }

  void type(String selector, String text) {
    driver.findElement(By.cssSelector(selector)).sendKeys(text);
  }

  /** Presses Tab until the element of that selector has the focus, and fails if none comes. */
  void tabTo(String selector) {
    for (int i = 0; i < 80; i++) {
      if (isTrue("return document.activeElement.matches(arguments[0])", selector)) {
        return;
      }
      press(Keys.TAB);
    }
    throw new AssertionError("the keyboard does not reach " + selector);
  }

  void accept() {
    driver.switchTo().alert().accept();
  }

  /** The page down to a height in CSS pixels as a PNG, below {@code target/screenshots}. */
  void screenshot(String name, int width, int height) {
    try {
      Path folder = Files.createDirectories(Path.of("target/screenshots"));
      Files.write(folder.resolve(name + ".png"), screenshot(width, height));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
