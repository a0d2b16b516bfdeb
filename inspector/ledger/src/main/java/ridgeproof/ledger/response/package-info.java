/**
 * Responses of a bureau: what kind of answer a transaction is, which submission it answers, and the
 * reasons it gives. In: a transaction as read. Out: the response that the ledger keeps.
 */
package ridgeproof.ledger.response;
