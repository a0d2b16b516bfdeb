/**
 * Reports for programs: JSON, SARIF, CSV. In: a report of findings. Out: one document of a
 * published schema.
 */
package ridgeproof.report.data;
