package ridgeproof.imagery.codec;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.nio.ByteBuffer;
import java.util.Arrays;
import javax.imageio.stream.ImageInputStreamImpl;
import ridgeproof.transaction.ByteSource;

/**
 * A codestream as javax.imageio reads it; once cancelled, the next read fails. It can go on with FF
 * bytes past the end, which arithmetic decoders expect there (ITU-T T.800 C.3.4).
 */
final class CancellableInput extends ImageInputStreamImpl {

  private final ByteBuffer bytes;
  private final long paddedEnd;
  private boolean readPastEnd;
  private volatile boolean cancelled;

  /**
   * @param padding FF bytes after the end
   */
  CancellableInput(ByteSource source, int padding) {
    this.bytes = source.asBuffer();
    this.paddedEnd = (long) source.length() + padding;
  }

  /** Whether padding was read. */
  boolean readPastEnd() {
    return readPastEnd;
  }

  void cancel() {
    cancelled = true;
  }

  @Override
  public int read() throws IOException {
    prepare();
    if (streamPos >= bytes.limit()) {
      return padding(1) == 1 ? 0xFF : -1;
    }
    return bytes.get((int) streamPos++) & 0xFF;
  }

  @Override
  public int read(byte[] target, int offset, int length) throws IOException {
    prepare();
    if (length == 0) {
      return 0;
    }
    int count = (int) Math.min(length, bytes.limit() - streamPos);
    if (count <= 0) {
      int padded = padding(length);
      Arrays.fill(target, offset, offset + padded, (byte) 0xFF);
      return padded > 0 ? padded : -1;
    }
    bytes.get((int) streamPos, target, offset, count);
    streamPos += count;
    return count;
  }

  @Override
  public long length() {
    return bytes.limit();
  }

  private int padding(int wanted) {
    int count = (int) Math.max(0, Math.min(wanted, paddedEnd - streamPos));
    readPastEnd |= count > 0;
    streamPos += count;
    return count;
  }

  private void prepare() throws IOException {
    checkClosed();
    bitOffset = 0;
    if (cancelled) {
      throw new InterruptedIOException("decoding was cancelled");
    }
  }
}
