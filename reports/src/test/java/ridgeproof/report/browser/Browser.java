package ridgeproof.report.browser;

import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.json.Json;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;
import org.openqa.selenium.print.PageSize;
import org.openqa.selenium.print.PrintOptions;

/** One headless Chromium, which every test class of a run shares. */
final class Browser implements AutoCloseable {

  private static final String AXE_VERSION =
      "/META-INF/maven/org.webjars.npm/axe-core/pom.properties";
  private static final String AXE = "/META-INF/resources/webjars/axe-core/%s/axe.min.js";

  /**
   * WCAG 2.1, levels A and AA, as axe-core tags its rules, and its own good practice. A page may
   * hold dozens of records made by one template, of which the first few stand for all.
   */
  private static final String RUN_AXE =
      """
      const done = arguments[1];
      axe.run({include: [['html']], exclude: [['.record ~ .record ~ .record ~ .record'],
            ['.field ~ .field ~ .field ~ .field ~ .quiet']]}, {resultTypes: ['violations'],
          runOnly: arguments[0]})
        .then(found => done(found.violations.map(violation => violation.id + ': ' + violation.help + ': '
          + violation.nodes.slice(0, 3).map(node => node.target.join(' ') + ' ' + node.failureSummary)
            .join(' | '))),
          failure => done(['axe-core failed: ' + failure]));
      """;

  /** Says at each start that it knows no protocol of this Chromium, which nothing here uses. */
  private static final String AFTER_PAINTING =
      "requestAnimationFrame(() => requestAnimationFrame(arguments[0]))";

  private static final Logger SELENIUM = Logger.getLogger("org.openqa.selenium");

  private final ChromeDriver driver;
  private final Path profile;
  private final String axe;

  private Browser(ChromeDriver driver, Path profile, String axe) {
    this.driver = driver;
    this.profile = profile;
    this.axe = axe;
  }

  /** Starts it with a profile of its own; Selenium is told both programs, so it looks for none. */
  static Browser start(InstalledChromium chromium) throws IOException {
    Path profile = Files.createTempDirectory("ridgeproof-browser");
    ChromeOptions options = new ChromeOptions();
    options.setBinary(chromium.browser().toFile());
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
    SELENIUM.setLevel(Level.SEVERE);
    ChromeDriverService service =
        new ChromeDriverService.Builder()
            .usingDriverExecutable(chromium.driver().toFile())
            .usingAnyFreePort()
            .build();
    return new Browser(new ChromeDriver(service, options), profile, axe());
  }

  private static String axe() throws IOException {
    Properties facts = new Properties();
    facts.load(new StringReader(resource(AXE_VERSION)));
    return resource(AXE.formatted(facts.getProperty("version")));
  }

  private static String resource(String name) throws IOException {
    try (InputStream in = Browser.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IOException("no resource " + name);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  /** Opens a page on a desk: 1280 pixels wide, light, on a screen, with scripts allowed. */
  void open(Path page) {
    allowScripts(true);
    media("", false);
    width(1280);
    forgetLogs();
    driver.get(page.toUri().toString());
    // Chromium drops keys that are pressed before a page is first painted.
    driver.executeAsyncScript(AFTER_PAINTING);
  }

  void reload() {
    driver.navigate().refresh();
  }

  /** The width of the page in CSS pixels. */
  void width(int pixels) {
    driver.executeCdpCommand(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", pixels, "height", 900, "deviceScaleFactor", 1, "mobile", false));
  }

  /** What the page is shown on ("print", or empty for a screen), and whether by night. */
  void media(String medium, boolean dark) {
    driver.executeCdpCommand(
        "Emulation.setEmulatedMedia",
        Map.of(
            "media",
            medium,
            "features",
            List.of(Map.of("name", "prefers-color-scheme", "value", dark ? "dark" : "light"))));
  }

  void allowScripts(boolean allowed) {
    driver.executeCdpCommand("Emulation.setScriptExecutionDisabled", Map.of("value", !allowed));
  }

  Object evaluate(String script, Object... arguments) {
    return driver.executeScript(script, arguments);
  }

  String text(String script, Object... arguments) {
    return String.valueOf(evaluate(script, arguments));
  }

  long number(String script, Object... arguments) {
    return ((Number) evaluate(script, arguments)).longValue();
  }

  boolean isTrue(String script, Object... arguments) {
    return Boolean.TRUE.equals(evaluate(script, arguments));
  }

  List<String> texts(String script, Object... arguments) {
    return ((List<?>) evaluate(script, arguments)).stream().map(String::valueOf).toList();
  }

  /** Clicks in the middle of the first element of that selector, as a mouse does. */
  void click(String selector) {
    new Actions(driver).click(driver.findElement(By.cssSelector(selector))).perform();
  }

  void press(Keys key) {
    new Actions(driver).sendKeys(key).perform();
  }

  void pressWithShift(Keys key) {
    new Actions(driver).keyDown(Keys.SHIFT).sendKeys(key).keyUp(Keys.SHIFT).perform();
  }

  /** What axe-core objects to, one line for each rule that is broken. */
  List<String> objections() {
    return objections("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "best-practice");
  }

  /** What axe-core objects to by those rules or tags of rules. */
  List<String> objections(String... rules) {
    if (!isTrue("return 'axe' in window")) {
      driver.executeScript(axe);
    }
    return ((List<?>) driver.executeAsyncScript(RUN_AXE, List.of(rules)))
        .stream().map(String::valueOf).toList();
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

  private void forgetLogs() {
    driver.manage().logs().get(LogType.BROWSER);
    driver.manage().logs().get(LogType.PERFORMANCE);
  }

  /** The page down to a height in CSS pixels as a PNG, not only what a window would show. */
  byte[] screenshot(int width, int height) {
    return clipped(Map.of("x", 0, "y", 0, "width", width, "height", height, "scale", 1));
  }

  /** The page on A4 as PDF. */
  byte[] printed() {
    PrintOptions options = new PrintOptions();
    options.setPageSize(new PageSize(29.7, 21));
    return Base64.getDecoder().decode(driver.print(options).getContent());
  }

  /** What stands at the place of the first element of that selector, as a PNG. */
  byte[] screenshotOf(String selector) {
    Map<?, ?> box =
        map(
            evaluate(
                """
                const box = document.querySelector(arguments[0]).getBoundingClientRect();
                return {x: box.x + scrollX, y: box.y + scrollY, width: box.width, height: box.height};
                """,
                selector));
    return clipped(
        Map.of(
            "x", box.get("x"),
            "y", box.get("y"),
            "width", box.get("width"),
            "height", box.get("height"),
            "scale", 1));
  }

  private byte[] clipped(Map<String, Object> clip) {
    Map<String, Object> shot =
        driver.executeCdpCommand(
            "Page.captureScreenshot",
            Map.of("format", "png", "captureBeyondViewport", true, "clip", clip));
    return Base64.getDecoder().decode(shot.get("data").toString());
  }

  @Override
  public void close() {
    driver.quit();
    try (var files = Files.walk(profile)) {
      files.sorted((left, right) -> right.compareTo(left)).forEach(Browser::delete);
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
