/**
 * What can be said of a value that a report masks.
 *
 * <p>In: a value and the row of its field. Out: what is likely wrong with it, in words that do not
 * show it.
 */
package ridgeproof.report.masked;
