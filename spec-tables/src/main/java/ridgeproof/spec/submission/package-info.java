/** What each type of transaction needs and allows: records, counts, prints, missing fingers. */
package ridgeproof.spec.submission;
