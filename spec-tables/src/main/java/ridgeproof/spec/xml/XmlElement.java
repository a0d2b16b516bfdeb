package ridgeproof.spec.xml;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** An element that the mapping knows, with those below it in the order of the schema. */
public final class XmlElement {

  private final String qualified;
  private final int order;
  private final Map<String, XmlElement> children = new LinkedHashMap<>();
  private final List<XmlRow> rows = new ArrayList<>();
  private boolean repeatable;

  XmlElement(String qualified, int order) {
    this.qualified = qualified;
    this.order = order;
  }

  /** Adds a row; its path leads from here. */
  void add(XmlRow row) {
    XmlElement at = this;
    for (XmlStep step : row.steps()) {
      XmlElement parent = at;
      at =
          at.children.computeIfAbsent(
              step.name(), name -> new XmlElement(step.qualified(), parent.children.size()));
      at.repeatable |= step.repeats() != XmlStep.Repeats.NOTHING || step.nth().isPresent();
    }
    at.rows.add(row);
  }

  /** The name with the usual prefix. */
  public String qualified() {
    return qualified;
  }

  public String prefix() {
    return qualified.substring(0, qualified.indexOf(':'));
  }

  /** Place among the elements of its parent, from 0. */
  public int order() {
    return order;
  }

  /** Whether there may be several within one parent. */
  public boolean mayRepeat() {
    return repeatable;
  }

  /**
   * The element of a name below this one, or null.
   *
   * @param name without prefix
   */
  public XmlElement child(String name) {
    return children.get(name);
  }

  /** What the text of the element carries; none for an element that only holds others. */
  public List<XmlRow> rows() {
    return rows;
  }
}
