/**
 * Limits fitted on prints. In: the plan of cases and the measures of labelled prints. Out: rows of
 * the table of ridge limits, with their operating curves.
 */
package ridgeproof.calibration.fit;
