package ridgeproof.imagery.codec;

import ridgeproof.transaction.record.ByteSource;

/**
 * Huffman tables as a lossless JPEG has them. An old encoder of fingerprint software marks its
 * tables as class 1, which is for the AC coefficients of the DCT; lossless coding has class 0 alone
 * (ITU-T T.81 B.2.4.2), and the library looks for its tables there.
 */
final class LosslessTables {

  private static final int DHT = 0xC4;
  private static final int CLASS = 0xF0;
  private static final int LENGTHS = 16;
  private static final int IDS = 4;

  private LosslessTables() {}

  /** The same bytes, or a copy whose tables are of class 0 where all of them are of class 1. */
  static ByteSource ofFirstClass(ByteSource codestream) {
    byte[] bytes = codestream.toArray();
    boolean changed = false;
    for (int at = 0; at + 4 < bytes.length; at++) {
      // Within coded data 0xFF is followed by 0, so that this is a marker wherever it stands.
      if ((bytes[at] & 0xFF) == 0xFF && (bytes[at + 1] & 0xFF) == DHT) {
        int length = (bytes[at + 2] & 0xFF) << 8 | bytes[at + 3] & 0xFF;
        int end = Math.min(bytes.length, at + 2 + length);
        for (int table = at + 4; table < end; table += 1 + LENGTHS + values(bytes, table, end)) {
          int head = bytes[table] & 0xFF;
          if ((head & CLASS) == 0) {
            return codestream;
          }
          if (head < 0x10 + IDS) {
            bytes[table] = (byte) (head & ~CLASS);
            changed = true;
          }
        }
        at = Math.max(at, end - 1);
      }
    }
    return changed ? ByteSource.of(bytes, codestream.origin()) : codestream;
  }

  private static int values(byte[] bytes, int table, int end) {
    int values = 0;
    for (int i = 1; i <= LENGTHS && table + i < end; i++) {
      values += bytes[table + i] & 0xFF;
    }
    return values;
  }
}
