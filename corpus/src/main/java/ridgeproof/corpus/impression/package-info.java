/**
 * Prints of fingers on a platen, with capture defects. In: skin and settings. Out: gray pixels and
 * where each finger lies.
 */
package ridgeproof.corpus.impression;
