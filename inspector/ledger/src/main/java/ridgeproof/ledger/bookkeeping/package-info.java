/**
 * Makes entries of examinations. In: the report on a file. Out: an entry for the ledger, without
 * anything that tells of a person.
 */
package ridgeproof.ledger.bookkeeping;
