/**
 * Two transactions compared. In: two examined files. Out: what differs in fields, images, prints
 * and findings.
 */
package ridgeproof.examination.comparison;
