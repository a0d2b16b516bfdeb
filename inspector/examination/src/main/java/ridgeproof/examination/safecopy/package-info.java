/**
 * Copies without anything personal. In: a transaction. Out: a transaction of the same structure
 * that shows the same faults, and what was changed.
 */
package ridgeproof.examination.safecopy;
