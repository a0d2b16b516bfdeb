package ridgeproof.imagery;

/**
 * Damage or an oddity within a codestream.
 *
 * @param offset bytes from the start of the file
 * @param detail what and where, without any value that could tell of a person
 */
public record ImageDefect(Kind kind, int offset, String detail) {

  /** What it means for the image. */
  public enum Kind {
    /** The pixels cannot be trusted or are not there. */
    DAMAGE,
    /** Not as the format has it, and the pixels are certain all the same. */
    ODDITY,
    /** Bytes after the end of the image. */
    TRAILING_BYTES,
    /** A limit of ours for one image stopped the work. */
    LIMIT,
    /** A limit of ours for all images of the file stopped the work. */
    FILE_LIMIT
  }
}
