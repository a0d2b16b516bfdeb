/** Two transactions compared, as text, JSON and page. In: a comparison. Out: its report. */
package ridgeproof.report.comparison;
