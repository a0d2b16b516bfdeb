package ridgeproof.report.browser;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import ridgeproof.testing.browser.Browser;
import ridgeproof.testing.browser.InstalledChromium;

/** A browser that opens reports from files. */
final class ReportBrowser extends Browser {

  /**
   * A page may hold dozens of records made by one template, of which the first few stand for all.
   */
  private static final String CHECKED =
      """
      {include: [['html']], exclude: [['.record ~ .record ~ .record ~ .record'],
            ['.field ~ .field ~ .field ~ .field ~ .quiet']]}""";

  private ReportBrowser(InstalledChromium chromium) throws IOException {
    super(chromium, CHECKED);
  }

  static ReportBrowser start(InstalledChromium chromium) {
    try {
      return new ReportBrowser(chromium);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  void open(Path page) {
    open(page.toUri().toString());
  }
}
