package ridgeproof.testing.browser;

import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
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

/** One headless Chromium of its own profile, which every test class of a run shares. */
public class Browser implements AutoCloseable {

  private static final String AXE_VERSION =
      "/META-INF/maven/org.webjars.npm/axe-core/pom.properties";
  private static final String AXE = "/META-INF/resources/webjars/axe-core/%s/axe.min.js";

  private static final String RUN_AXE =
      """
      const done = arguments[1];
      axe.run(%s, {resultTypes: ['violations'], runOnly: arguments[0], iframes: false})
        .then(found => done(found.violations.map(violation => violation.id + ': ' + violation.help + ': '
          + violation.nodes.slice(0, 3).map(node => node.target.join(' ') + ' ' + node.failureSummary)
            .join(' | '))),
          failure => done(['axe-core failed: ' + failure]));
      """;

  private static final String AFTER_PAINTING =
      "requestAnimationFrame(() => requestAnimationFrame(arguments[0]))";

  /** Says at each start that it knows no protocol of this Chromium, which nothing here uses. */
  private static final Logger SELENIUM = Logger.getLogger("org.openqa.selenium");

  protected final ChromeDriver driver;
  private final Path profile;
  private final String axe;
  private final String runAxe;

  /**
   * Starts it; Selenium is told both programs, so it looks for none.
   *
   * @param checked what of a page axe-core looks at, as an expression of JavaScript
   */
  protected Browser(InstalledChromium chromium, String checked) throws IOException {
    profile = Files.createTempDirectory("ridgeproof-browser");
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
    driver = new ChromeDriver(service, options);
    axe = axe();
    runAxe = String.format(Locale.ROOT, RUN_AXE, checked);
  }

  private static String axe() throws IOException {
    Properties facts = new Properties();
    facts.load(new StringReader(resource(AXE_VERSION)));
    return resource(String.format(Locale.ROOT, AXE, facts.getProperty("version")));
  }

  private static String resource(String name) throws IOException {
    try (InputStream in = Browser.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IOException("no resource " + name);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  /** Opens an address: 1280 pixels wide, light, on a screen, with scripts allowed. */
  public final void open(String address) {
    allowScripts(true);
    media("", false);
    width(1280);
    forgetLogs();
    driver.get(address);
    // Chromium drops keys that are pressed before a page is first painted.
    driver.executeAsyncScript(AFTER_PAINTING);
  }

  public void reload() {
    driver.navigate().refresh();
  }

  /** The width of the page in CSS pixels. */
  public void width(int pixels) {
    driver.executeCdpCommand(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", pixels, "height", 900, "deviceScaleFactor", 1, "mobile", false));
  }

  /** What the page is shown on ("print", or empty for a screen), and whether by night. */
  public void media(String medium, boolean dark) {
    driver.executeCdpCommand(
        "Emulation.setEmulatedMedia",
        Map.of(
            "media",
            medium,
            "features",
            List.of(Map.of("name", "prefers-color-scheme", "value", dark ? "dark" : "light"))));
  }

  public void allowScripts(boolean allowed) {
    driver.executeCdpCommand("Emulation.setScriptExecutionDisabled", Map.of("value", !allowed));
  }

  public Object evaluate(String script, Object... arguments) {
    return driver.executeScript(script, arguments);
  }

  public String text(String script, Object... arguments) {
    return String.valueOf(evaluate(script, arguments));
  }

  public long number(String script, Object... arguments) {
    return ((Number) evaluate(script, arguments)).longValue();
  }

  public boolean isTrue(String script, Object... arguments) {
    return Boolean.TRUE.equals(evaluate(script, arguments));
  }

  public List<String> texts(String script, Object... arguments) {
    return ((List<?>) evaluate(script, arguments)).stream().map(String::valueOf).toList();
  }

  /** Clicks in the middle of the first element of that selector, as a mouse does. */
  public void click(String selector) {
    new Actions(driver).click(driver.findElement(By.cssSelector(selector))).perform();
  }

  public void press(CharSequence... keys) {
    new Actions(driver).sendKeys(keys).perform();
  }

  public void pressWithShift(Keys key) {
    new Actions(driver).keyDown(Keys.SHIFT).sendKeys(key).keyUp(Keys.SHIFT).perform();
  }

  /** What axe-core objects to, one line for each rule that is broken. */
  public List<String> objections() {
    return objections("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "best-practice");
  }

  /** What axe-core objects to by those rules or tags of rules. */
  public List<String> objections(String... rules) {
    if (!isTrue("return 'axe' in window")) {
      driver.executeScript(axe);
    }
    return ((List<?>) driver.executeAsyncScript(runAxe, List.of(rules)))
        .stream().map(String::valueOf).toList();
  }

  /** Errors, warnings and broken policies since the page was opened or this was last asked. */
  public List<String> complaints() {
    return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
        .filter(entry -> entry.getLevel().intValue() >= Level.WARNING.intValue())
        .map(LogEntry::getMessage)
        .toList();
  }

  /** The addresses that were asked for since the page was opened or this was last asked. */
  public List<String> requests() {
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
  public byte[] screenshot(int width, int height) {
    return clipped(Map.of("x", 0, "y", 0, "width", width, "height", height, "scale", 1));
  }

  /** The page on A4 as PDF. */
  public byte[] printed() {
    PrintOptions options = new PrintOptions();
    options.setPageSize(new PageSize(29.7, 21));
    return Base64.getDecoder().decode(driver.print(options).getContent());
  }

  /** What stands at the place of the first element of that selector, as a PNG. */
  public byte[] screenshotOf(String selector) {
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
