package ridgeproof.imagery.wsq.codestream;

/**
 * Something wrong with a codestream.
 *
 * @param offset where, as an absolute byte offset in the file
 * @param detail what, in numbers and marker names only: never the text of a comment, which may hold
 *     personal data
 */
public record CodestreamDefect(Kind kind, int offset, String detail) {

  /** What kind of thing is wrong. */
  public enum Kind {
    /** The first two bytes are not SOI. */
    NO_SOI,
    /** Bytes between two segments that belong to neither. */
    STRAY_BYTES,
    /** A marker that WSQ does not define, or one where it cannot stand. */
    UNKNOWN_MARKER,
    /** A segment whose stated length does not fit its content. */
    BAD_SEGMENT_LENGTH,
    /** A table whose content is impossible. */
    BAD_TABLE,
    /** A filter, quantization or Huffman table that is needed but not there. */
    MISSING_TABLE,
    /** No usable SOF. */
    MISSING_FRAME,
    /** A second SOF, which is ignored. */
    REPEATED_FRAME,
    /** No entropy-coded block. */
    MISSING_BLOCK,
    /** A width or height of 0. */
    SIZE_OUT_OF_RANGE,
    /** The bytes end inside a segment or block. */
    TRUNCATED,
    /** No EOI. */
    MISSING_EOI,
    /** Bytes after EOI. */
    TRAILING_BYTES,
    /** A restart marker although no restart interval is defined. */
    RESTART_WITHOUT_INTERVAL,
    /** A bit pattern that is no code of the block's Huffman table. */
    BAD_CODE,
    /** A block that holds fewer coefficients than its subbands need. */
    BLOCK_TOO_SHORT,
    /** A block that goes on after its last coefficient. */
    BLOCK_TOO_LONG,
    /** More pixels than the caller's limit. */
    SIZE_OVER_LIMIT,
    /** More pixels than the bytes at hand can code. */
    SIZE_IMPLAUSIBLE,
    /** The caller's deadline passed. */
    TIME_LIMIT,
    /** The caller cancelled. */
    CANCELLED
  }
}
