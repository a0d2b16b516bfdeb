package ridgeproof.examination.cause.transport;

import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.record.LogicalRecord;

/** How often each byte occurs, and how line ends are written. */
final class Census {

  private static final int CR = '\r';
  private static final int LF = '\n';

  private final long[] counts = new long[256];
  private final long pairs;
  private final long length;

  private Census(ByteSource source) {
    long found = 0;
    int before = -1;
    for (int i = 0; i < source.length(); i++) {
      int value = source.byteAt(i);
      counts[value]++;
      if (before == CR && value == LF) {
        found++;
      }
      before = value;
    }
    pairs = found;
    length = source.length();
  }

  static Census of(ByteSource source) {
    return new Census(source);
  }

  static Census of(LogicalRecord record) {
    return new Census(record.bytes());
  }

  long count(int value) {
    return counts[value];
  }

  /** CR directly before LF. */
  long pairs() {
    return pairs;
  }

  long lineFeeds() {
    return counts[LF];
  }

  long returns() {
    return counts[CR];
  }

  long loneLineFeeds() {
    return counts[LF] - pairs;
  }

  long loneReturns() {
    return counts[CR] - pairs;
  }

  /** Bytes that no 7-bit channel carries. */
  long high() {
    long high = 0;
    for (int value = 0x80; value < counts.length; value++) {
      high += counts[value];
    }
    return high;
  }

  /** How many pairs there would be by chance. */
  double pairsByChance() {
    return length == 0 ? 0 : (double) counts[LF] * counts[CR] / length;
  }
}
