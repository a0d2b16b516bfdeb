/**
 * What is remembered of an examination: hashes, verdict, rules, scores and measures, and never a
 * biographic value or an image. Who a transaction or an operator was is known to the holder of the
 * key alone. The packages below make entries, store them, and report on them.
 */
package ridgeproof.ledger;
