/** What all forms of a report share: options, facts of the file, escaped text and words. */
package ridgeproof.report;
