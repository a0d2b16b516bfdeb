package ridgeproof.desk;

import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.concurrent.locks.LockSupport;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebDriverException;
import org.openqa.selenium.WindowType;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.json.Json;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;

/** A headless Chromium of its own profile, in front of a desk. */
final class Chromium implements AutoCloseable {

  private static final String AXE_VERSION =
      "/META-INF/maven/org.webjars.npm/axe-core/pom.properties";
  private static final String AXE = "/META-INF/resources/webjars/axe-core/%s/axe.min.js";
  private static final Duration PATIENCE = Duration.ofSeconds(90);
  private static final Duration PAUSE = Duration.ofMillis(50);
  private static final String PAGE_TEXT = "return document.body.innerText.slice(0, 2000)";

  /** Reports in the frame have tests of their own. */
  private static final String RUN_AXE =
      """
      const done = arguments[1];
      axe.run(document, {resultTypes: ['violations'], runOnly: arguments[0], iframes: false})
        .then(found => done(found.violations.map(violation => violation.id + ': ' + violation.help + ': '
          + violation.nodes.slice(0, 3).map(node => node.target.join(' ') + ' ' + node.failureSummary)
            .join(' | '))),
          failure => done(['axe-core failed: ' + failure]));
      """;

  private final ChromeDriver driver;
  private final Path profile;

  private Chromium(ChromeDriver driver, Path profile) {
    this.driver = driver;
    this.profile = profile;
  }

  /** Starts it; Selenium is told both programs, so it looks for none. */
  static Chromium start(Path browser, Path driver) throws IOException {
    Path profile = Files.createTempDirectory("ridgeproof-desk-browser");
    ChromeOptions options = new ChromeOptions();
    options.setBinary(browser.toFile());
    options.addArguments(
        "--headless",
        "--no-sandbox",
        "--disable-gpu",
        "--disable-quic",
        "--disable-dev-shm-usage",
        "--no-first-run",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
        "--hide-scrollbars",
        "--user-data-dir=" + profile);
    LoggingPreferences logs = new LoggingPreferences();
    logs.enable(LogType.BROWSER, Level.ALL);
    logs.enable(LogType.PERFORMANCE, Level.ALL);
    options.setCapability("goog:loggingPrefs", logs);
    Logger.getLogger("org.openqa.selenium").setLevel(Level.SEVERE);
    ChromeDriverService service =
        new ChromeDriverService.Builder()
            .usingDriverExecutable(driver.toFile())
            .usingAnyFreePort()
            .build();
    Chromium chromium = new Chromium(new ChromeDriver(service, options), profile);
    chromium.driver.manage().timeouts().scriptTimeout(PATIENCE);
    return chromium;
  }

  /** Opens an address 1280 pixels wide, light. */
  void open(String address) {
    dark(false);
    width(1280);
    driver.manage().logs().get(LogType.BROWSER);
    driver.manage().logs().get(LogType.PERFORMANCE);
    driver.get(address);
  }

  /** Lets the browser in and waits for the list. */
  void enter(String address) {
    open(address);
    until("return document.getElementById('rows') !== null && document.readyState === 'complete'");
  }

  void go(String address) {
    driver.get(address);
  }

  String address() {
    return driver.getCurrentUrl();
  }

  void reload() {
    driver.navigate().refresh();
  }

  void newTab() {
    driver.switchTo().newWindow(WindowType.TAB);
  }

  /** The width of the page in CSS pixels. */
  void width(int pixels) {
    driver.executeCdpCommand(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", pixels, "height", 900, "deviceScaleFactor", 1, "mobile", false));
  }

  void dark(boolean dark) {
    driver.executeCdpCommand(
        "Emulation.setEmulatedMedia",
        Map.of(
            "media",
            "",
            "features",
            List.of(Map.of("name", "prefers-color-scheme", "value", dark ? "dark" : "light"))));
  }

  Object evaluate(String script, Object... arguments) {
    return driver.executeScript(script, arguments);
  }

  String text(String script, Object... arguments) {
    return String.valueOf(evaluate(script, arguments));
  }

  boolean isTrue(String script, Object... arguments) {
    return Boolean.TRUE.equals(evaluate(script, arguments));
  }

  long number(String script, Object... arguments) {
    return ((Number) evaluate(script, arguments)).longValue();
  }

  List<String> texts(String script, Object... arguments) {
    return ((List<?>) evaluate(script, arguments)).stream().map(String::valueOf).toList();
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

  void click(String selector) {
    driver.findElement(By.cssSelector(selector)).click();
  }

  void type(String selector, String text) {
    driver.findElement(By.cssSelector(selector)).sendKeys(text);
  }

  void press(CharSequence... keys) {
    new Actions(driver).sendKeys(keys).perform();
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

  /** What axe-core objects to, one line for each rule that is broken. */
  List<String> objections() {
    if (!isTrue("return 'axe' in window")) {
      driver.executeScript(axe());
    }
    return ((List<?>)
            driver.executeAsyncScript(
                RUN_AXE, List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "best-practice")))
        .stream().map(String::valueOf).toList();
  }

  private static String axe() {
    Properties facts = new Properties();
    try {
      facts.load(new StringReader(resource(AXE_VERSION)));
      return resource(AXE.formatted(facts.getProperty("version")));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String resource(String name) throws IOException {
    try (InputStream in = Chromium.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IOException("no resource " + name);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  /** Errors, warnings and broken policies since the page was opened or this was last asked. */
  List<String> complaints() {
    return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
        .filter(entry -> entry.getLevel().intValue() >= Level.WARNING.intValue())
        .map(LogEntry::getMessage)
        .toList();
  }

  /** The addresses that were asked for since the page was opened or this was last asked. */
  List<String> requests() {
    return driver.manage().logs().get(LogType.PERFORMANCE).getAll().stream()
        .map(entry -> map(map(new Json().toType(entry.getMessage(), Map.class)).get("message")))
        .filter(message -> "Network.requestWillBeSent".equals(message.get("method")))
        .map(message -> map(map(message.get("params")).get("request")).get("url").toString())
        .toList();
  }

  private static Map<?, ?> map(Object value) {
    return (Map<?, ?>) value;
  }

  /** The page down to a height in CSS pixels as a PNG, below {@code target/screenshots}. */
  void screenshot(String name, int width, int height) {
    Map<String, Object> shot =
        driver.executeCdpCommand(
            "Page.captureScreenshot",
            Map.of(
                "format",
                "png",
                "captureBeyondViewport",
                true,
                "clip",
                Map.of("x", 0, "y", 0, "width", width, "height", height, "scale", 1)));
    try {
      Path folder = Files.createDirectories(Path.of("target/screenshots"));
      Files.write(
          folder.resolve(name + ".png"), Base64.getDecoder().decode(shot.get("data").toString()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public void close() {
    driver.quit();
    try (var files = Files.walk(profile)) {
      files.sorted((left, right) -> right.compareTo(left)).forEach(Chromium::delete);
    } catch (IOException | UncheckedIOException e) {
      System.out.println("a browser profile is left in " + profile);
    }
  }

  private static void delete(Path file) {
    try {
      Files.deleteIfExists(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
