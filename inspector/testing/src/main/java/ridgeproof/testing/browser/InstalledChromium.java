package ridgeproof.testing.browser;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * Chromium and its driver on this machine. Where they are missing, Debian's packages are installed
 * if this process may do that.
 *
 * @param browser the program of the browser
 * @param driver the program that WebDriver speaks to
 */
public record InstalledChromium(Path browser, Path driver) {

  static final String PACKAGES = "chromium chromium-driver";

  private static final int MAX_MINUTES = 6;

  /** The programs on the path, once installed if need be; empty where that cannot be done. */
  public static Optional<InstalledChromium> findOrInstall(Path log) {
    return onPath().or(() -> mayInstall() && install(log) ? onPath() : Optional.empty());
  }

  private static Optional<InstalledChromium> onPath() {
    return program("chromium")
        .flatMap(
            browser ->
                program("chromedriver").map(driver -> new InstalledChromium(browser, driver)));
  }

  private static Optional<Path> program(String name) {
    String path = Optional.ofNullable(System.getenv("PATH")).orElse("");
    return Stream.of(path.split(File.pathSeparator))
        .filter(folder -> !folder.isEmpty())
        .map(folder -> Path.of(folder, name))
        .filter(Files::isExecutable)
        .findFirst();
  }

  private static boolean mayInstall() {
    return "root".equals(System.getProperty("user.name")) && program("apt-get").isPresent();
  }

  /** A new machine knows no package before its lists are fetched. */
  private static boolean install(Path log) {
    System.out.println("installing " + PACKAGES + " for the tests in a browser; see " + log);
    String install = "apt-get install -y --no-install-recommends " + PACKAGES;
    return run(List.of("sh", "-c", install + " || { apt-get update && " + install + "; }"), log);
  }

  private static boolean run(List<String> command, Path log) {
    ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
    builder.environment().put("DEBIAN_FRONTEND", "noninteractive");
    builder.redirectInput(ProcessBuilder.Redirect.from(new File("/dev/null")));
    builder.redirectOutput(log.toFile());
    try {
      Process process = builder.start();
      if (process.waitFor(MAX_MINUTES, TimeUnit.MINUTES)) {
        return process.exitValue() == 0;
      }
      process.descendants().forEach(ProcessHandle::destroy);
      process.destroy();
      return false;
    } catch (IOException e) {
      return false;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }
}
