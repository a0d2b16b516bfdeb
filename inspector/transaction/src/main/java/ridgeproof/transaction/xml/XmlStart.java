package ridgeproof.transaction.xml;

import ridgeproof.transaction.record.ByteSource;

/** Tells XML by its first bytes. */
public final class XmlStart {

  private static final int SEARCHED = 1024;

  private XmlStart() {}

  /** Whether the first characters are those of XML, of one or of two bytes each. */
  public static boolean isXml(ByteSource source) {
    int i = source.startsWith(0, 0xEF, 0xBB, 0xBF) ? 3 : WideText.isWide(source) ? 2 : 0;
    int step = i == 2 ? 2 : 1;
    if (i == 2) {
      return WideText.beginsWithTag(source);
    }
    int end = Math.min(source.length() - 1, SEARCHED);
    while (i < end && source.byteAt(i) <= ' ') {
      i += step;
    }
    return i < end && source.byteAt(i) == '<' && canFollow(source.byteAt(i + 1));
  }

  static boolean canFollow(int value) {
    return value == '?'
        || value == '!'
        || value == '_'
        || value >= 'A' && value <= 'Z'
        || value >= 'a' && value <= 'z';
  }
}
