package ridgeproof.report.browser;

import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;
import ridgeproof.testing.browser.SharedBrowser;

/** One browser and one set of pages for all test classes of a run. */
final class BrowserExtension implements BeforeAllCallback, ParameterResolver {

  @Override
  public void beforeAll(ExtensionContext context) {
    SharedBrowser.start(context, ReportBrowser.class, ReportBrowser::start);
    SharedBrowser.store(context)
        .getOrComputeIfAbsent(TestPages.class, key -> new TestPages(), TestPages.class);
  }

  @Override
  public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
    Class<?> type = parameter.getParameter().getType();
    return type == ReportBrowser.class || type == TestPages.class;
  }

  @Override
  public Object resolveParameter(ParameterContext parameter, ExtensionContext context) {
    return SharedBrowser.store(context).get(parameter.getParameter().getType());
  }
}
