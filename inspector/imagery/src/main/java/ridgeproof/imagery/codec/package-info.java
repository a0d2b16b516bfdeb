/**
 * Codestreams to pixels, one class for each format. In: bytes and limits. Out: gray pixels, or the
 * defect that prevents them.
 */
package ridgeproof.imagery.codec;
