/**
 * Minutiae, and whether the prints of a set are of the fingers whose positions they bear. In: block
 * maps and templates. Out: similarities and the best assignment.
 */
package ridgeproof.ridges.matching;
