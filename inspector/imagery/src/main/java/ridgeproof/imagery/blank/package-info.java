/**
 * Blank images of the same format, size and length. In: a codestream. Out: one that shows nothing
 * and keeps its faults.
 */
package ridgeproof.imagery.blank;
