/**
 * Cores, deltas and the pattern class. In: the orientation field. Out: singular points and a class.
 */
package ridgeproof.ridges.pattern;
