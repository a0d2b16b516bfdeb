/**
 * Markers, segments and tables of a WSQ codestream, read and written. In: bytes. Out: the parts of
 * the codestream with their places.
 */
package ridgeproof.imagery.wsq.codestream;
