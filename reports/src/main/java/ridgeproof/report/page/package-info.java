/**
 * The report as a page. In: a report of findings and, where wanted, pixels. Out: self-contained
 * HTML.
 */
package ridgeproof.report.page;
