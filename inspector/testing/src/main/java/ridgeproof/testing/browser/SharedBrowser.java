package ridgeproof.testing.browser;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Function;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ExtensionContext.Namespace;
import org.junit.jupiter.api.extension.ExtensionContext.Store;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;

/**
 * The one browser of a run. A machine that has no Chromium and may not install it skips the tests
 * and says what to install; where {@code CI=true} they fail. Methods get it as a parameter.
 */
public abstract class SharedBrowser<B extends Browser>
    implements BeforeAllCallback, ParameterResolver {

  private static final Path LOG = Path.of("target/chromium-install.log").toAbsolutePath();
  private static final String SKIPPED =
      "skipped: the tests in a browser need the packages " + InstalledChromium.PACKAGES;

  private final Class<B> type;
  private final Function<InstalledChromium, B> starting;

  protected SharedBrowser(Class<B> type, Function<InstalledChromium, B> starting) {
    this.type = type;
    this.starting = starting;
  }

  /** What was found on this machine, looked for once a run. */
  private record Search(Optional<InstalledChromium> chromium) {}

  /** Starts the browser unless it runs already, or skips the tests of the class. */
  @Override
  public void beforeAll(ExtensionContext context) {
    Optional<InstalledChromium> chromium =
        store(context)
            .getOrComputeIfAbsent(
                Search.class, key -> new Search(InstalledChromium.findOrInstall(LOG)), Search.class)
            .chromium();
    if (chromium.isEmpty() && "true".equals(System.getenv("CI"))) {
      throw new AssertionError(
          "CI needs the packages " + InstalledChromium.PACKAGES + "; see " + LOG);
    }
    if (chromium.isEmpty()) {
      System.out.println(SKIPPED); // a skipped assumption's own message never reaches the console
    }
    Assumptions.assumeTrue(chromium.isPresent(), SKIPPED);
    store(context).getOrComputeIfAbsent(type, key -> starting.apply(chromium.orElseThrow()), type);
  }

  @Override
  public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
    return parameter.getParameter().getType() == type;
  }

  @Override
  public Object resolveParameter(ParameterContext parameter, ExtensionContext context) {
    return store(context).get(parameter.getParameter().getType());
  }

  /** What all test classes of a run share; closed when it ends. */
  protected static Store store(ExtensionContext context) {
    return context.getRoot().getStore(Namespace.create(SharedBrowser.class));
  }
}
