package ridgeproof.transaction.record;

/**
 * A run of bytes in the examined file.
 *
 * @param offset bytes from the start of the file, 0 or more
 * @param length bytes, 0 or more
 */
public record ByteRange(int offset, int length) {

  public ByteRange {
    if (offset < 0 || length < 0) {
      throw new IllegalArgumentException("negative range " + offset + "+" + length);
    }
  }

  public static ByteRange between(int start, int end) {
    return new ByteRange(start, end - start);
  }

  /** The offset of the first byte after the range. */
  public int end() {
    return offset + length;
  }

  public boolean contains(int position) {
    return position >= offset && position < end();
  }
}
