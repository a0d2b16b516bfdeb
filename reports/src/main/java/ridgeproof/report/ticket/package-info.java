/**
 * A report for a help desk, without personal data. In: a report of findings. Out: text, Markdown or
 * a page.
 */
package ridgeproof.report.ticket;
