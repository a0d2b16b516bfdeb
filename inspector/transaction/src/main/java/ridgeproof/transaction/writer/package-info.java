/**
 * Records to bytes in the traditional encoding. In: drafts. Out: bytes with right lengths and
 * counts.
 */
package ridgeproof.transaction.writer;
