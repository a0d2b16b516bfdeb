/**
 * The report on paper. In: the model of the page. Out: a tagged PDF, the same bytes for the same
 * file.
 */
package ridgeproof.report.pdf;
