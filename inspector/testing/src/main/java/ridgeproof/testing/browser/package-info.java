/**
 * A real browser for the tests of pages. In: the Chromium of this machine, installed where need be.
 * Out: one browser for each run, which is asked by scripts, keys and clicks; or skipped tests that
 * say why.
 */
package ridgeproof.testing.browser;
