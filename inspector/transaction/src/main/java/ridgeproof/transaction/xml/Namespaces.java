package ridgeproof.transaction.xml;

import java.util.HashMap;
import java.util.Map;

/** Which namespace each prefix stands for at a place of the document. */
final class Namespaces {

  private Map<String, String> bindings = Map.of();

  /** The bindings that hold now, to be put back when the element ends. */
  Map<String, String> current() {
    return bindings;
  }

  void restore(Map<String, String> earlier) {
    bindings = earlier;
  }

  /**
   * Takes in an attribute if it declares a namespace.
   *
   * @return whether it does
   */
  boolean declare(String attribute, String uri) {
    if (!attribute.equals("xmlns") && !attribute.startsWith("xmlns:")) {
      return false;
    }
    Map<String, String> more = new HashMap<>(bindings);
    more.put(attribute.equals("xmlns") ? "" : attribute.substring(6), uri);
    bindings = more;
    return true;
  }

  /** The namespace, or null where none is declared. */
  String of(String prefix) {
    return bindings.get(prefix);
  }
}
