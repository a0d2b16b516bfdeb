package ridgeproof.report.browser;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ExtensionContext.Namespace;
import org.junit.jupiter.api.extension.ExtensionContext.Store;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;

/**
 * One browser and one set of pages for all test classes of a run. A machine that has no Chromium
 * and may not install it skips the tests and says what to install; where {@code CI=true} they fail.
 */
final class BrowserExtension implements BeforeAllCallback, ParameterResolver {

  private static final Path LOG = Path.of("target/chromium-install.log").toAbsolutePath();
  private static final String SKIPPED =
      "skipped: the tests in a browser need the packages " + InstalledChromium.PACKAGES;

  /** What was found on this machine, looked for once a run. */
  private record Search(Optional<InstalledChromium> chromium) {}

  @Override
  public void beforeAll(ExtensionContext context) {
    Search search =
        store(context)
            .getOrComputeIfAbsent(
                Search.class,
                key -> new Search(InstalledChromium.findOrInstall(LOG)),
                Search.class);
    if (search.chromium().isEmpty() && "true".equals(System.getenv("CI"))) {
      throw new AssertionError(
          "CI needs the packages " + InstalledChromium.PACKAGES + "; see " + LOG);
    }
    if (search.chromium().isEmpty()) {
      System.out.println(SKIPPED); // a skipped assumption's own message never reaches the console
    }
    Assumptions.assumeTrue(search.chromium().isPresent(), SKIPPED);
    store(context)
        .getOrComputeIfAbsent(
            Browser.class, key -> start(search.chromium().orElseThrow()), Browser.class);
    store(context).getOrComputeIfAbsent(TestPages.class, key -> new TestPages(), TestPages.class);
  }

  private static Browser start(InstalledChromium chromium) {
    try {
      return Browser.start(chromium);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Store store(ExtensionContext context) {
    return context.getRoot().getStore(Namespace.create(BrowserExtension.class));
  }

  @Override
  public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
    Class<?> type = parameter.getParameter().getType();
    return type == Browser.class || type == TestPages.class;
  }

  @Override
  public Object resolveParameter(ParameterContext parameter, ExtensionContext context) {
    return store(context).get(parameter.getParameter().getType());
  }
}
