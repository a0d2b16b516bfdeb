package ridgeproof.imagery.wsq.codestream;

/**
 * A marker and the bytes that belong to it, not counting the entropy-coded data after SOB.
 *
 * @param offset of the marker's first byte in the file
 * @param length in bytes, with the two bytes of the marker
 */
public record WsqSegment(WsqMarker marker, int offset, int length) {}
