package ridgeproof.imagery.blank;

import java.util.Arrays;
import ridgeproof.transaction.record.ByteSource;

/** The bytes that come in the place of an image: as many as it had, none of them taken over yet. */
final class ImageBytes {

  private final ByteSource source;
  private final byte[] bytes;

  ImageBytes(ByteSource source, int filler) {
    this.source = source;
    this.bytes = new byte[source.length()];
    Arrays.fill(bytes, (byte) filler);
  }

  ByteSource source() {
    return source;
  }

  /** Takes over what is there of these bytes. */
  void keep(int position, int count) {
    for (int i = Math.max(0, position); i < Math.min(position + count, bytes.length); i++) {
      bytes[i] = (byte) source.byteAt(i);
    }
  }

  void put(int position, byte[] values) {
    for (int i = 0; i < values.length && position + i < bytes.length; i++) {
      bytes[position + i] = values[i];
    }
  }

  void fill(int from, int to, int value) {
    Arrays.fill(bytes, Math.max(0, from), Math.min(to, bytes.length), (byte) value);
  }

  byte[] toArray() {
    return bytes;
  }
}
