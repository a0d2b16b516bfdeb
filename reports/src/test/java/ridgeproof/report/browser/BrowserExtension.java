package ridgeproof.report.browser;

import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ParameterContext;
import ridgeproof.testing.browser.SharedBrowser;

/** One browser and one set of pages for all test classes of a run. */
final class BrowserExtension extends SharedBrowser<ReportBrowser> {

  BrowserExtension() {
    super(ReportBrowser.class, ReportBrowser::start);
  }

  @Override
  public void beforeAll(ExtensionContext context) {
    super.beforeAll(context);
    store(context).getOrComputeIfAbsent(TestPages.class, key -> new TestPages(), TestPages.class);
  }

  @Override
  public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
    return super.supportsParameter(parameter, context)
        || parameter.getParameter().getType() == TestPages.class;
  }
}
