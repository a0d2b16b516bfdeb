package ridgeproof.imagery.blank;

import ridgeproof.transaction.record.ByteSource;

/**
 * A TIFF file (TIFF 6.0, from memory) of which only the first directory's short numbers are left.
 * All other bytes are ones: Group 4 data (ITU-T T.6) of ones alone is a white page, each line like
 * the one above.
 */
final class BlankTiff {

  private static final int WHITE_LINES = 0xFF;
  private static final int ENTRY_BYTES = 12;
  private static final int MAX_ENTRIES = 256;
  private static final int SHORT = 3;
  private static final int LONG = 4;
  private static final int RATIONAL = 5;

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
    int entries = (int) Math.min(number(start, 2), MAX_ENTRIES);
    bytes.keep(start, 2);
    int position = start + 2;
    long previous = 0;
    for (int i = 0; i < entries && source.has(position, ENTRY_BYTES); i++) {
      long tag = number(position, 2);
      if (tag <= previous) {
        break;
      }
      previous = tag;
      entry(bytes, position);
      position += ENTRY_BYTES;
    }
    bytes.fill(position, position + 4, 0);
    return bytes.toArray();
  }

  /** What does not fit into an entry stands elsewhere, and goes but for a resolution. */
  private void entry(ImageBytes bytes, int position) {
    long type = number(position + 2, 2);
    long count = number(position + 4, 4);
    long value = number(position + 8, 4);
    boolean number = (type == SHORT || type == LONG) && count == 1;
    boolean elsewhere = count > 4 || type == RATIONAL || count > 1 && type == LONG;
    bytes.keep(position, number || elsewhere ? ENTRY_BYTES : 8);
    if (type == RATIONAL && count == 1 && value < source.length()) {
      bytes.keep((int) value, 8);
    }
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
