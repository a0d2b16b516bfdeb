package ridgeproof.desk;

import ridgeproof.testing.browser.SharedBrowser;

/** One browser for all test classes of a run. */
final class ChromiumExtension extends SharedBrowser<Chromium> {

  ChromiumExtension() {
    super(Chromium.class, Chromium::start);
  }
}
