/**
 * Bytes to records. In: the bytes of a file. Out: a transaction with findings; never an exception
 * for what a file holds.
 */
package ridgeproof.transaction.reader;
