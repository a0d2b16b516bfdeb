package ridgeproof.imagery.blank;

import ridgeproof.transaction.ByteSource;

/**
 * A TIFF file (TIFF 6.0, from memory) of which only the first directory's short numbers are left.
 * All other bytes are ones: Group 4 data (ITU-T T.6) of ones alone is a white page, each line like
 * the one above.
 */
final class BlankTiff {

  private static final int WHITE_LINES = 0xFF;
  private static final int ENTRY_BYTES = 12;
  private static final int MOST_ENTRIES = 256;

  /** Tags ascend; what comes after the last of TIFF 6.0 belongs to somebody else. */
  private static final int LAST_BASELINE_TAG = 532;

  private static final int SHORT = 3;
  private static final int LONG = 4;

  private final ByteSource source;
  private final boolean littleEndian;

  BlankTiff(ByteSource source) {
    this.source = source;
    this.littleEndian = source.byteAt(0) == 'I';
  }

  byte[] bytes() {
    ImageBytes bytes = new ImageBytes(source, WHITE_LINES);
    bytes.keep(0, 8);
    long directory = source.has(4, 4) ? number(4, 4) : Long.MAX_VALUE;
    if (directory > source.length() - 2) {
      return bytes.toArray();
    }
    int start = (int) directory;
    int entries = (int) Math.min(number(start, 2), MOST_ENTRIES);
    bytes.keep(start, 2);
    int position = start + 2;
    long previous = 0;
    for (int i = 0; i < entries && source.has(position, ENTRY_BYTES); i++) {
      long tag = number(position, 2);
      if (tag <= previous || tag > LAST_BASELINE_TAG) {
        break;
      }
      previous = tag;
      long type = number(position + 2, 2);
      long count = number(position + 4, 4);
      // A single number stands in the entry itself; strings and others stand elsewhere and go.
      boolean plain = (type == SHORT || type == LONG) && count == 1;
      bytes.keep(position, plain ? ENTRY_BYTES : 8);
      position += ENTRY_BYTES;
    }
    bytes.fill(position, position + 4, 0);
    return bytes.toArray();
  }

  private long number(int position, int count) {
    long number = 0;
    for (int i = 0; i < count; i++) {
      int at = littleEndian ? position + count - 1 - i : position + i;
      number = number << 8 | source.byteAt(at);
    }
    return number;
  }
}
