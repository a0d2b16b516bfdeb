/**
 * What tests of several modules share. In: files outside the project. Out: samples, or a skipped
 * test that says why.
 */
package ridgeproof.testing;
