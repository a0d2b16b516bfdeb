package ridgeproof.transaction.xml;

import ridgeproof.transaction.record.ByteSource;

/** What is left of a document whose beginning has been read elsewhere. */
final class EndTags {

  private EndTags() {}

  /** Whether only end tags, comments and blanks stand in a range. */
  static boolean fill(ByteSource source, int from, int to) {
    int i = from;
    while (i < to) {
      int value = source.byteAt(i);
      if (value == '<' && (source.startsWith(i, '<', '/') || source.startsWith(i, '<', '!', '-'))) {
        int end = source.indexOf('>', i, to);
        if (end < 0) {
          return false;
        }
        i = end + 1;
      } else if (value <= ' ') {
        i++;
      } else {
        return false;
      }
    }
    return true;
  }
}
