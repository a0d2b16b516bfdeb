package ridgeproof.transaction.xml;

import java.util.OptionalInt;
import ridgeproof.spec.xml.XmlTables;
import ridgeproof.transaction.record.ByteSource;

/** Tells XML by its first bytes, or by the first transaction that follows other text. */
public final class XmlStart {

  private static final int SEARCHED = 64 * 1024;

  private XmlStart() {}

  /** Whether the first characters are those of XML, of one or of two bytes each. */
  public static boolean isXml(ByteSource source) {
    if (WideText.isWide(source)) {
      return WideText.beginsWithTag(source);
    }
    return isTag(source, firstPrinted(source));
  }

  /**
   * Where XML with a transaction begins: at the first character, or behind other bytes.
   *
   * @return a position in the source; empty for a file that is no XML
   */
  public static OptionalInt in(ByteSource source, XmlTables tables) {
    if (isXml(source)) {
      return OptionalInt.of(WideText.isWide(source) ? 0 : begin(source));
    }
    ByteSource top = source.slice(0, SEARCHED);
    OptionalInt known = new KnownStarts(top, tables).next(0);
    if (known.isEmpty()) {
      return known;
    }
    int declared = top.latin1(0, known.getAsInt()).lastIndexOf("<?xml ");
    return OptionalInt.of(declared < 0 ? known.getAsInt() : declared);
  }

  /** Blanks may stand before the first tag, but not before a declaration. */
  private static int begin(ByteSource source) {
    int first = firstPrinted(source);
    return source.startsWith(first, '<', '?', 'x', 'm', 'l')
        ? first
        : Math.min(first, mark(source));
  }

  private static int mark(ByteSource source) {
    return source.startsWith(0, 0xEF, 0xBB, 0xBF) ? 3 : 0;
  }

  private static int firstPrinted(ByteSource source) {
    int i = mark(source);
    int end = Math.min(source.length() - 1, SEARCHED);
    while (i < end && isBlank(source.byteAt(i))) {
      i++;
    }
    return i;
  }

  private static boolean isTag(ByteSource source, int at) {
    return source.has(at, 2) && source.byteAt(at) == '<' && canFollow(source.byteAt(at + 1));
  }

  private static boolean isBlank(int value) {
    return value == ' ' || value == '\t' || value == '\r' || value == '\n';
  }

  static boolean canFollow(int value) {
    return value == '?'
        || value == '!'
        || value == '_'
        || value >= 'A' && value <= 'Z'
        || value >= 'a' && value <= 'z';
  }
}
