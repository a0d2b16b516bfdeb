package ridgeproof.examination.xml;

import java.io.InputStream;
import java.nio.ByteBuffer;
import ridgeproof.spec.layout.CharacterType;
import ridgeproof.transaction.record.ByteSource;

/**
 * XML without its long runs of Base64, all line ends kept: a validator would hold each image in
 * memory as text, and the schemas allow any.
 */
final class WithoutImages extends InputStream {

  private static final int MAX_KEPT = 4096;

  private final ByteBuffer bytes;
  private int position;
  private int runEnd;

  WithoutImages(ByteSource source) {
    this.bytes = source.asBuffer();
  }

  @Override
  public int read() {
    while (position < runEnd && bytes.get(position) != '\n') {
      position++;
    }
    if (position >= bytes.limit()) {
      return -1;
    }
    int value = bytes.get(position++) & 0xFF;
    if (value == '>' && position > runEnd) {
      int end = position;
      while (end < bytes.limit() && CharacterType.B64.allows(bytes.get(end))) {
        end++;
      }
      runEnd = end - position > MAX_KEPT ? end : runEnd;
    }
    return value;
  }

  @Override
  public int read(byte[] buffer, int offset, int length) {
    int count = 0;
    while (count < length) {
      int value = read();
      if (value < 0) {
        return count == 0 && length > 0 ? -1 : count;
      }
      buffer[offset + count++] = (byte) value;
    }
    return count;
  }
}
