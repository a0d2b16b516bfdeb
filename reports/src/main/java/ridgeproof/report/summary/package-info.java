/**
 * Many files as one page. In: one report after another. Out: counts, rates and links; no report is
 * kept.
 */
package ridgeproof.report.summary;
