/**
 * Draws prints of nobody for safe copies.
 *
 * <p>In: what an image of the original shows and what is wrong with it. Out: a print of the same
 * size from the corpus that shows the same fault.
 */
package ridgeproof.cli.drawing;
