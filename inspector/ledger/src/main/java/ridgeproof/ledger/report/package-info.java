/**
 * What a ledger shows over many files: what the bureau said against what was said before sending,
 * acceptance, rejections, recaptures. In: rows of a ledger. Out: figures with intervals, as text
 * and as a page with plots.
 */
package ridgeproof.ledger.report;
