package ridgeproof.transaction.record;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * Read-only, bounds-checked bytes of a file or of a part of it. A slice shares the bytes of its
 * parent and knows where it stands in the file, so that a finding can always name an absolute
 * offset.
 *
 * <p>Multi-byte numbers are big-endian, as ANSI/NIST-ITL binary records and WSQ codestreams have
 * them.
 */
public final class ByteSource {

  private static final int PIECE = 1 << 12;

  /** What is viewed where that is an array; digests copy any other bytes. */
  private final byte[] array;

  private final int arrayOffset;
  private final ByteBuffer held;
  private final Base64Text coded;
  private final int origin;

  private ByteSource(byte[] array, int arrayOffset, ByteBuffer bytes, int origin) {
    this.array = array;
    this.arrayOffset = arrayOffset;
    this.held = bytes;
    this.coded = null;
    this.origin = origin;
  }

  private ByteSource(Base64Text coded, int origin) {
    this.array = null;
    this.arrayOffset = 0;
    this.held = null;
    this.coded = coded;
    this.origin = origin;
  }

  private ByteBuffer bytes() {
    return held != null ? held : coded.decoded();
  }

  /** The bytes before a position, and maybe more. */
  private ByteBuffer bytes(int end) {
    return held != null ? held : coded.decoded(end);
  }

  /** Wraps the bytes without copying them; the caller leaves them unchanged from now on. */
  public static ByteSource of(byte[] bytes) {
    return of(bytes, 0);
  }

  /** Wraps bytes that stand for a part of a file, so that places in them are places in the file. */
  public static ByteSource of(byte[] bytes, int origin) {
    return new ByteSource(bytes, 0, ByteBuffer.wrap(bytes).asReadOnlyBuffer(), origin);
  }

  /** Wraps a buffer, for instance a memory-mapped file, from its position to its limit. */
  public static ByteSource of(ByteBuffer buffer) {
    return new ByteSource(null, 0, buffer.slice().asReadOnlyBuffer(), 0);
  }

  /**
   * What a Base64 text stands for; decoded when first looked at, and again where memory ran short
   * meanwhile. The origin is that of the text.
   *
   * @param length how many bytes that is
   */
  public static ByteSource ofBase64(ByteSource text, int length) {
    return new ByteSource(new Base64Text(text, length), text.origin());
  }

  /** The number of bytes. */
  public int length() {
    return held != null ? held.limit() : coded.length();
  }

  /** The offset in the file of this source's first byte. */
  public int origin() {
    return origin;
  }

  public boolean isEmpty() {
    return length() == 0;
  }

  /** Whether {@code count} bytes are there from {@code position} on. */
  public boolean has(int position, int count) {
    return position >= 0 && count >= 0 && position <= length() - count;
  }

  /**
   * The byte at a position counted from this source's start, 0 to 255.
   *
   * @throws IndexOutOfBoundsException outside the source, which is a defect of the caller
   */
  public int byteAt(int position) {
    return bytes(position + 1).get(position) & 0xFF;
  }

  /** An unsigned 16-bit number. */
  public int uint16At(int position) {
    return bytes(position + 2).getShort(position) & 0xFFFF;
  }

  /** An unsigned 32-bit number. */
  public long uint32At(int position) {
    return bytes(position + 4).getInt(position) & 0xFFFFFFFFL;
  }

  /** Whether there is a byte at the position and it is an ASCII digit. */
  public boolean isDigitAt(int position) {
    return has(position, 1) && byteAt(position) >= '0' && byteAt(position) <= '9';
  }

  /** The first position at or after {@code from} that holds the byte, or -1. */
  public int indexOf(int value, int from) {
    return indexOf(value, from, length());
  }

  /**
   * The first position in {@code from} (inclusive) to {@code to} (exclusive) that holds the byte,
   * or -1.
   */
  public int indexOf(int value, int from, int to) {
    byte wanted = (byte) value;
    int end = Math.min(to, length());
    ByteBuffer searched = bytes(end);
    for (int i = Math.max(from, 0); i < end; i++) {
      if (searched.get(i) == wanted) {
        return i;
      }
    }
    return -1;
  }

  /** Whether the bytes at the position are these. */
  public boolean startsWith(int position, int... values) {
    if (!has(position, values.length)) {
      return false;
    }
    for (int i = 0; i < values.length; i++) {
      if (byteAt(position + i) != values[i]) {
        return false;
      }
    }
    return true;
  }

  /** A view of a part, cut to what is there. */
  public ByteSource slice(int position, int count) {
    int start = Math.max(0, Math.min(position, length()));
    int size = Math.max(0, Math.min(count, length() - start));
    return new ByteSource(
        array,
        arrayOffset + start,
        bytes(start + size).slice(start, size).asReadOnlyBuffer(),
        origin + start);
  }

  /** A view from a position to the end. */
  public ByteSource from(int position) {
    return slice(position, length());
  }

  /** The absolute range that this source covers. */
  public ByteRange range() {
    return new ByteRange(origin, length());
  }

  /** Every byte as one character of the same number, so that nothing is lost or changed. */
  public String latin1(int position, int count) {
    byte[] copy = new byte[count];
    bytes(position + count).get(position, copy);
    return new String(copy, StandardCharsets.ISO_8859_1);
  }

  /** Whether another source holds the same bytes. */
  public boolean hasSameBytes(ByteSource other) {
    return coded != null && other.coded != null
        ? coded.standsForTheSame(other.coded)
        : length() == other.length() && bytes().equals(other.bytes());
  }

  /** The SHA-256 of these bytes, 64 hexadecimal digits. */
  public String sha256() {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      feed(digest::update);
      return HexFormat.of().formatHex(digest.digest());
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }

  /** Hands all bytes to a digest, such as {@code mac::update}. */
  public void feed(Digest digest) {
    if (array != null) {
      digest.update(array, arrayOffset, length());
      return;
    }
    ByteBuffer rest = asBuffer();
    byte[] piece = new byte[Math.min(PIECE, rest.remaining())];
    while (rest.hasRemaining()) {
      int count = Math.min(piece.length, rest.remaining());
      rest.get(piece, 0, count);
      digest.update(piece, 0, count);
    }
  }

  /** Takes in one piece of some bytes after the other, and changes none. */
  public interface Digest {
    void update(byte[] bytes, int offset, int length);
  }

  /** A read-only view for decoders and channels. */
  public ByteBuffer asBuffer() {
    return bytes().duplicate();
  }

  /** A copy of the bytes, for libraries that want an array. */
  public byte[] toArray() {
    byte[] copy = new byte[length()];
    bytes().get(0, copy);
    return copy;
  }
}
