package ridgeproof.transaction.xml;

import java.util.OptionalInt;
import ridgeproof.spec.xml.XmlTables;
import ridgeproof.transaction.record.ByteSource;

/** Tells where in a file the start tag of a record or of a package stands. */
final class KnownStarts {

  private static final int MAX_NAME = 200;
  private static final String PACKAGE =
      XmlTables.PACKAGE.substring(XmlTables.PACKAGE.indexOf(':') + 1);

  private final ByteSource source;
  private final XmlTables xml;

  KnownStarts(ByteSource source, XmlTables xml) {
    this.source = source;
    this.xml = xml;
  }

  /** The first at or after a position. */
  OptionalInt next(int from) {
    for (int at = source.indexOf('<', from); at >= 0; at = source.indexOf('<', at + 1)) {
      String name = nameAt(at + 1);
      if (name.equals(PACKAGE) || xml.record(name).isPresent()) {
        return OptionalInt.of(at);
      }
    }
    return OptionalInt.empty();
  }

  /** Whether a start that was found is that of a package. */
  boolean isPackage(int start) {
    return nameAt(start + 1).equals(PACKAGE);
  }

  /** The name at a position without its prefix. */
  private String nameAt(int begin) {
    int end = begin;
    int limit = Math.min(source.length(), begin + MAX_NAME);
    int local = begin;
    while (end < limit && isOfName(source.byteAt(end))) {
      if (source.byteAt(end) == ':') {
        local = end + 1;
      }
      end++;
    }
    return source.latin1(local, end - local);
  }

  private static boolean isOfName(int value) {
    return value > ' ' && value != '>' && value != '/' && value != '<';
  }
}
