/** Reports for a terminal. In: a report of findings. Out: lines of at most 80 columns. */
package ridgeproof.report.text;
