/**
 * Scenarios turned into transaction files. In: a scenario. Out: bytes, and what they are known to
 * hold.
 */
package ridgeproof.corpus.composition;
