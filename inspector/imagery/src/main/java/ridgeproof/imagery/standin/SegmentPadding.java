package ridgeproof.imagery.standin;

import java.io.ByteArrayOutputStream;

/** Comments of zeros that make a codestream of marker segments as long as another. */
final class SegmentPadding {

  private static final int MARKER = 0xFF;
  private static final int HEAD = 4;
  private static final int LONGEST = 2 + 0xFFFF;

  private SegmentPadding() {}

  /**
   * Marker segments.
   *
   * @param code of the comment, the byte after 0xFF
   * @param shortest bytes that a segment of this format has with its marker
   * @param length of all, 0 or at least {@code shortest}
   * @param first bytes of the content of each segment
   */
  static byte[] of(int code, int shortest, int length, int... first) {
    ByteArrayOutputStream out = new ByteArrayOutputStream(length);
    int left = length;
    while (left > 0) {
      int size = Math.min(left, LONGEST);
      // What is left over has to hold a segment of its own.
      size -= left > size && left - size < shortest ? shortest : 0;
      out.write(MARKER);
      out.write(code);
      out.write(size - 2 >>> 8);
      out.write(size - 2);
      for (int value : first) {
        out.write(value);
      }
      out.writeBytes(new byte[size - HEAD - first.length]);
      left -= size;
    }
    return out.toByteArray();
  }

  /** Whether so many bytes can be filled: none, or a segment of the shortest kind and more. */
  static boolean fills(int length, int shortest) {
    return length == 0 || length >= shortest;
  }

  /** The bytes with others put in at a place. */
  static byte[] inserted(byte[] bytes, int at, byte[] more) {
    ByteArrayOutputStream out = new ByteArrayOutputStream(bytes.length + more.length);
    out.write(bytes, 0, at);
    out.writeBytes(more);
    out.write(bytes, at, bytes.length - at);
    return out.toByteArray();
  }
}
