/**
 * The front door of WSQ: decode and encode. In: bytes or pixels. Out: pixels or bytes, and the
 * defects of a codestream.
 */
package ridgeproof.imagery.wsq;
