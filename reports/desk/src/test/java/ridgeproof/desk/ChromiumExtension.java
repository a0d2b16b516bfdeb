package ridgeproof.desk;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ExtensionContext.Namespace;
import org.junit.jupiter.api.extension.ExtensionContext.Store;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;

/**
 * One browser for all test classes of a run. A machine without the Debian packages chromium and
 * chromium-driver skips the tests and says so; where {@code CI=true} they fail.
 */
final class ChromiumExtension implements BeforeAllCallback, ParameterResolver {

  private static final String SKIPPED =
      "skipped: the tests of the desk in a browser need the packages chromium chromium-driver";

  @Override
  public void beforeAll(ExtensionContext context) {
    Optional<Path> browser = program("chromium");
    Optional<Path> driver = program("chromedriver");
    boolean there = browser.isPresent() && driver.isPresent();
    if (!there && "true".equals(System.getenv("CI"))) {
      throw new AssertionError("CI needs the packages chromium chromium-driver");
    }
    if (!there) {
      System.out.println(SKIPPED); // a skipped assumption's own message never reaches the console
    }
    Assumptions.assumeTrue(there, SKIPPED);
    store(context)
        .getOrComputeIfAbsent(
            Chromium.class,
            key -> start(browser.orElseThrow(), driver.orElseThrow()),
            Chromium.class);
  }

  private static Optional<Path> program(String name) {
    String path = Optional.ofNullable(System.getenv("PATH")).orElse("");
    return Stream.of(path.split(File.pathSeparator))
        .filter(folder -> !folder.isEmpty())
        .map(folder -> Path.of(folder, name))
        .filter(Files::isExecutable)
        .findFirst();
  }

  private static Chromium start(Path browser, Path driver) {
    try {
      return Chromium.start(browser, driver);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Store store(ExtensionContext context) {
    return context.getRoot().getStore(Namespace.create(ChromiumExtension.class));
  }

  @Override
  public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
    return parameter.getParameter().getType() == Chromium.class;
  }

  @Override
  public Object resolveParameter(ParameterContext parameter, ExtensionContext context) {
    return store(context).get(Chromium.class);
  }
}
