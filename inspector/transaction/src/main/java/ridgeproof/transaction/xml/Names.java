package ridgeproof.transaction.xml;

import java.util.HashMap;
import java.util.Map;

/** Names of elements, parted once for each that occurs. */
final class Names {

  private static final int MAX_KEPT = 4096;

  /** A name as it is written: its prefix, empty without one, and the rest. */
  record Name(String prefix, String local) {

    static Name of(String written) {
      int colon = written.indexOf(':');
      return new Name(colon < 0 ? "" : written.substring(0, colon), written.substring(colon + 1));
    }
  }

  private final Map<String, Name> known = new HashMap<>();

  Name of(String written) {
    Name name = known.get(written);
    if (name == null) {
      name = Name.of(written);
      if (known.size() < MAX_KEPT) {
        known.put(written, name);
      }
    }
    return name;
  }
}
