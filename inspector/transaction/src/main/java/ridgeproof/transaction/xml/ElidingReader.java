package ridgeproof.transaction.xml;

import java.io.Reader;
import java.nio.ByteBuffer;
import java.util.Arrays;
import ridgeproof.transaction.record.ByteSource;

/**
 * Gives a parser each byte as one character, so that its offsets are offsets of bytes, and leaves
 * out long runs of Base64 and blanks after a tag, so that images cost one look at each byte.
 */
final class ElidingReader extends Reader {

  /** Shorter runs are not worth a gap. */
  private static final int MIN_GAP = 1024;

  /** Most texts are short. */
  private static final int MIN_PIECE = 64;

  private static final boolean[] RUN = run();

  private final ByteBuffer bytes;
  private final int begin;
  private final int end;
  private int position;
  private int produced;
  private int[] gapAt = new int[16];
  private int[] skipped = new int[16];
  private int gaps;
  private final byte[] piece = new byte[8 * 1024];

  /**
   * @param begin where in the source to begin
   */
  ElidingReader(ByteSource source, int begin) {
    this.bytes = source.asBuffer();
    this.begin = begin;
    this.end = source.length();
    this.position = begin;
  }

  @Override
  public int read(char[] buffer, int offset, int length) {
    int count = 0;
    while (count < length && position < end) {
      int value = bytes.get(position++) & 0xFF;
      buffer[offset + count++] = (char) value;
      if (value == '>') {
        skipRun(produced + count);
      }
    }
    produced += count;
    return count == 0 && length > 0 ? -1 : count;
  }

  private void skipRun(int at) {
    int runEnd = runEnd();
    if (runEnd - position < MIN_GAP) {
      return;
    }
    if (gaps == gapAt.length) {
      gapAt = Arrays.copyOf(gapAt, 2 * gaps);
      skipped = Arrays.copyOf(skipped, 2 * gaps);
    }
    gapAt[gaps] = at;
    skipped[gaps] = (gaps == 0 ? 0 : skipped[gaps - 1]) + runEnd - position;
    gaps++;
    position = runEnd;
  }

  /** Where a run that begins here ends; looked at in pieces, which is quicker by far. */
  private int runEnd() {
    int at = position;
    while (at < end) {
      int length = Math.min(at == position ? MIN_PIECE : piece.length, end - at);
      bytes.get(at, piece, 0, length);
      for (int i = 0; i < length; i++) {
        if (!RUN[piece[i] & 0xFF]) {
          return at + i;
        }
      }
      at += length;
    }
    return at;
  }

  /** Where in the source a character begins that the parser counts so. */
  int start(long offset) {
    return place((int) offset, find((int) offset, true));
  }

  /** Where in the source a run of characters ends that the parser counts so. */
  int end(long offset) {
    return place((int) offset, find((int) offset, false));
  }

  private int place(int offset, int gapsBefore) {
    return Math.min(end, begin + offset + (gapsBefore == 0 ? 0 : skipped[gapsBefore - 1]));
  }

  /** How many gaps lie before a character; one just before it counts where told to. */
  private int find(int offset, boolean inclusive) {
    int found = Arrays.binarySearch(gapAt, 0, gaps, offset);
    return found >= 0 ? inclusive ? found + 1 : found : -found - 1;
  }

  @Override
  public void close() {
    // The bytes are not its own.
  }

  private static boolean[] run() {
    boolean[] run = new boolean[256];
    for (char c :
        "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/=\r\n\t ".toCharArray()) {
      run[c] = true;
    }
    return run;
  }
}
