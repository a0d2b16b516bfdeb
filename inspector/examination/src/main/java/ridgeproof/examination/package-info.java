/**
 * The front door: a transaction in, a report of findings with verdict and recommended actions out.
 * Runs rules first, then causes.
 */
package ridgeproof.examination;
