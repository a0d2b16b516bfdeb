package ridgeproof.transaction.xml;

import java.nio.ByteBuffer;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.Iterator;
import java.util.Map;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.TreeSet;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import org.codehaus.stax2.LocationInfo;
import org.codehaus.stax2.XMLStreamReader2;
import ridgeproof.finding.TextPlace;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.xml.XmlElement;
import ridgeproof.spec.xml.XmlTables;
import ridgeproof.transaction.record.ByteSource;

/**
 * Line, column and element path of places in XML: one more look at the file, for the few places
 * that a report speaks of, so that reading keeps nothing of the kind.
 */
public final class TextPlaces {

  private static final int PIECE = 8 * 1024;

  private record Open(String shown, XmlElement element, Map<String, Integer> counts) {}

  private final ByteSource source;
  private final XmlTables tables;
  private final Base64Runs runs;
  private final TreeMap<Integer, String> paths = new TreeMap<>();
  private final Deque<Open> open = new ArrayDeque<>();
  private final Names names = new Names();
  private Iterator<Integer> waiting;
  private int next;

  private TextPlaces(ByteSource source, SpecTables tables) {
    this.source = source;
    this.tables = tables.xml();
    this.runs = new Base64Runs(source);
  }

  /**
   * Where offsets are.
   *
   * @param offsets bytes from the start of the source
   */
  public static Map<Integer, TextPlace> of(
      ByteSource source, SpecTables tables, TreeSet<Integer> offsets) {
    TextPlaces places = new TextPlaces(source, tables);
    places.waiting = offsets.iterator();
    places.advance();
    places.findPaths();
    return places.count(offsets);
  }

  private void advance() {
    next = waiting.hasNext() ? waiting.next() : Integer.MAX_VALUE;
  }

  private void findPaths() {
    int from = Declaration.of(source, XmlStart.in(source, tables).orElse(0)).end();
    KnownStarts starts = new KnownStarts(source, tables);
    Parser parser = new Parser();
    while (next < Integer.MAX_VALUE && from < source.length()) {
      int broken = findPaths(parser, from);
      // Where the XML breaks in its first tag, that tag would be found again for ever.
      OptionalInt resumed =
          broken < 0 ? OptionalInt.empty() : starts.next(Math.max(broken, from + 1));
      if (resumed.isEmpty()) {
        return;
      }
      leave(starts.isPackage(resumed.getAsInt()));
      from = resumed.getAsInt();
    }
  }

  /**
   * What is open of a record is not closed where the XML breaks. What follows is in the outermost
   * package, or is a package itself, so that no file makes paths of any length.
   */
  private void leave(boolean packageToo) {
    int outer = 0;
    int at = 0;
    for (Iterator<Open> each = open.descendingIterator(); each.hasNext() && outer == 0; at++) {
      outer = each.next().shown().startsWith(XmlTables.PACKAGE) ? at + 1 : 0;
    }
    int kept = packageToo ? Math.max(0, outer - 1) : outer;
    while (open.size() > kept) {
      open.pop();
    }
  }

  /** Goes on until the document ends or breaks, and says where it broke, or -1. */
  private int findPaths(Parser factory, int from) {
    ElidingReader characters = new ElidingReader(source, runs, from);
    int last = from;
    try {
      XMLStreamReader2 parser = factory.parse(characters);
      LocationInfo info = parser.getLocationInfo();
      while (parser.hasNext() && next < Integer.MAX_VALUE) {
        int event = parser.next();
        if (event == XMLStreamConstants.START_ELEMENT) {
          passUpTo(characters.start(info.getStartingCharOffset()));
          last = characters.end(info.getEndingCharOffset());
          begin(names.of(parser.getLocalName()));
        } else if (event == XMLStreamConstants.END_ELEMENT) {
          last = characters.end(info.getEndingCharOffset());
          passUpTo(last);
          if (!open.isEmpty()) {
            open.pop();
          }
        }
      }
      return -1;
    } catch (XMLStreamException stop) {
      int broken = Math.max(last, characters.brokenAt(stop).orElse(last));
      passUpTo(broken + 1);
      return broken;
    }
  }

  private void begin(Names.Name name) {
    Open parent = open.peek();
    XmlElement element =
        parent != null && parent.element() != null ? parent.element().child(name.local()) : null;
    if (element == null) {
      element =
          tables.record(name.local()).map(record -> tables.element(record.type())).orElse(null);
    }
    boolean isPackage = XmlTables.PACKAGE.endsWith(":" + name.local());
    String shown = element != null ? element.qualified() : isPackage ? XmlTables.PACKAGE : "*";
    int nth = parent == null ? 1 : parent.counts().merge(shown, 1, Integer::sum);
    open.push(new Open(nth == 1 ? shown : shown + "[" + nth + "]", element, new HashMap<>()));
  }

  /** Gives every waiting place before an offset the path that is open. */
  private void passUpTo(int offset) {
    while (next - source.origin() < offset && next < Integer.MAX_VALUE) {
      StringBuilder path = new StringBuilder();
      open.descendingIterator()
          .forEachRemaining(
              element -> path.append(path.length() == 0 ? "" : "/").append(element.shown()));
      paths.put(next, path.toString());
      advance();
    }
  }

  private Map<Integer, TextPlace> count(TreeSet<Integer> offsets) {
    Map<Integer, TextPlace> places = new HashMap<>();
    ByteBuffer bytes = source.asBuffer();
    byte[] piece = new byte[PIECE];
    int at = 0;
    int line = 1;
    int column = 1;
    for (int offset : offsets) {
      int end = Math.min(offset - source.origin(), bytes.limit());
      while (at < end) {
        int length = Math.min(PIECE, end - at);
        bytes.get(at, piece, 0, length);
        for (int i = 0; i < length; i++) {
          if (piece[i] == '\n') {
            line++;
            column = 1;
          } else if ((piece[i] & 0xC0) != 0x80) {
            column++;
          }
        }
        at += length;
      }
      places.put(offset, new TextPlace(line, column, paths.getOrDefault(offset, "")));
    }
    return places;
  }
}
