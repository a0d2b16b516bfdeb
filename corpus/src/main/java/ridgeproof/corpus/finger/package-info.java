/**
 * The skin of one finger of a person who does not exist. In: a seed. Out: ridges with their cores,
 * deltas and minutiae as ground truth.
 */
package ridgeproof.corpus.finger;
