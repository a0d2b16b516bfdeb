package ridgeproof.transaction.xml;

import java.io.Reader;
import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.OptionalInt;
import javax.xml.stream.XMLStreamException;
import ridgeproof.transaction.record.ByteSource;

/**
 * Gives a parser each byte as one character, so that its offsets are offsets of bytes, and leaves
 * out long runs of Base64 and blanks after a tag, so that images cost one look at each byte.
 */
final class ElidingReader extends Reader {

  private final ByteBuffer bytes;
  private final Base64Runs runs;
  private final int begin;
  private final int end;
  private int position;
  private int produced;
  private int[] gapAt = new int[16];
  private int[] skipped = new int[16];
  private int gaps;

  /**
   * @param runs the runs of the source
   * @param begin where in the source to begin
   */
  ElidingReader(ByteSource source, Base64Runs runs, int begin) {
    this.bytes = source.asBuffer();
    this.runs = runs;
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
    int runEnd = runs.at(position).end();
    if (runEnd - position < Base64Runs.MIN_KEPT) {
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

  /** Where in the source a character begins that the parser counts so. */
  int start(long offset) {
    return place((int) offset, find((int) offset, true));
  }

  /** Where in the source a run of characters ends that the parser counts so. */
  int end(long offset) {
    return place((int) offset, find((int) offset, false));
  }

  /** Where in the source a parser of these characters stopped, if it knows. */
  OptionalInt brokenAt(XMLStreamException stop) {
    return stop.getLocation() == null
        ? OptionalInt.empty()
        : OptionalInt.of(start(Math.max(0, stop.getLocation().getCharacterOffset())));
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
}
