package ridgeproof.transaction.xml;

import java.util.HashMap;
import java.util.Map;
import ridgeproof.spec.xml.XmlElement;

/** An element of a record that has begun and not yet ended. */
final class OpenElement {

  /** What the mapping knows of it; null where it does not know it. */
  final XmlElement element;

  /** Tells it from every other element of the record. */
  final int id;

  /** Its number among those of its name, from 1. */
  final int nth;

  final int start;
  final int textStart;
  boolean holdsElements;
  private int lastOrder = -1;
  private Map<String, Integer> counts = Map.of();

  OpenElement(XmlElement element, int id, int nth, int start, int textStart) {
    this.element = element;
    this.id = id;
    this.nth = nth;
    this.start = start;
    this.textStart = textStart;
  }

  /** Counts one more element of the name within this one. */
  int count(String name) {
    if (counts.isEmpty()) {
      counts = new HashMap<>();
    }
    return counts.merge(name, 1, Integer::sum);
  }

  /** Whether an element of this place in the schema comes after one that it should precede. */
  boolean isLate(int order) {
    boolean late = order < lastOrder;
    lastOrder = Math.max(lastOrder, order);
    return late;
  }
}
