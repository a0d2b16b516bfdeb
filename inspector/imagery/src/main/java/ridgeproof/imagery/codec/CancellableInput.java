package ridgeproof.imagery.codec;

import java.io.EOFException;
import java.io.IOException;
import java.io.InterruptedIOException;
import java.nio.ByteBuffer;
import java.util.Arrays;
import javax.imageio.stream.ImageInputStreamImpl;
import ridgeproof.transaction.record.ByteSource;

/**
 * A codestream as javax.imageio reads it; once cancelled, the next read fails. It can go on with
 * zero bytes past the end, which are empty packets to JPEG 2000 (ITU-T T.800 B.10.3).
 */
final class CancellableInput extends ImageInputStreamImpl {

  private static final int MAX_READS_AT_END = 10_000;

  private final ByteBuffer bytes;
  private final long paddedEnd;
  private int readsAtEnd;
  private volatile int farthest;
  private boolean readPastEnd;
  private volatile boolean cancelled;

  /**
   * @param padding zero bytes after the end
   */
  CancellableInput(ByteSource source, int padding) {
    this.bytes = source.asBuffer();
    this.paddedEnd = (long) source.length() + padding;
  }

  /** Whether padding was read. */
  boolean readPastEnd() {
    return readPastEnd;
  }

  /** The position behind the last byte that was read. */
  int farthest() {
    return farthest;
  }

  void cancel() {
    cancelled = true;
  }

  @Override
  public int read() throws IOException {
    prepare();
    if (streamPos >= bytes.limit()) {
      return padding(1) == 1 ? 0 : ended();
    }
    int value = bytes.get((int) streamPos++) & 0xFF;
    farthest = Math.max(farthest, (int) streamPos);
    return value;
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
      Arrays.fill(target, offset, offset + padded, (byte) 0);
      return padded > 0 ? padded : ended();
    }
    bytes.get((int) streamPos, target, offset, count);
    streamPos += count;
    farthest = Math.max(farthest, (int) streamPos);
    return count;
  }

  @Override
  public long length() {
    return bytes.limit();
  }

  /** Some decoders take the end for more bits and would go on for ever. */
  private int ended() throws EOFException {
    if (++readsAtEnd > MAX_READS_AT_END) {
      throw new EOFException();
    }
    return -1;
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
