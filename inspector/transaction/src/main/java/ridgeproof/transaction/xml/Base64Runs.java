package ridgeproof.transaction.xml;

import java.util.HashMap;
import java.util.Map;
import ridgeproof.transaction.record.ByteSource;

/** The long runs of Base64 of a file, each looked at once however often it is asked for. */
final class Base64Runs {

  /** Shorter runs are looked at again. */
  static final int MIN_KEPT = 1024;

  private final ByteSource source;
  private final Base64Run.Scanner scanner;
  private final Map<Integer, Base64Run> kept = new HashMap<>();

  Base64Runs(ByteSource source) {
    this.source = source;
    this.scanner = new Base64Run.Scanner(source);
  }

  /** The run that begins at a place, which may be of no length. */
  Base64Run at(int start) {
    Base64Run known = kept.get(start);
    if (known != null) {
      return known;
    }
    Base64Run found = scanner.run(start, source.length());
    if (found.length() >= MIN_KEPT) {
      kept.put(start, found);
    }
    return found;
  }

  /** The run at a place that ends with a text at the latest. */
  Base64Run within(int start, int textEnd) {
    Base64Run known = kept.get(start);
    return known != null && known.end() <= textEnd ? known : scanner.run(start, textEnd);
  }
}
