package ridgeproof.spec.published;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** Which enumerated or simple types stand behind the elements of the published schemas. */
final class SchemaTypes {

  private static final String XSD = "http://www.w3.org/2001/XMLSchema";
  private static final int DEEPEST = 6;

  private final Map<String, List<String>> typesOfElements = new HashMap<>();
  private final Map<String, List<Element>> types = new HashMap<>();

  SchemaTypes(PublishedLists shared) {
    shared.files("xml/schemas/ebts", ".xsd").forEach(this::read);
  }

  private void read(Path schema) {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
      factory.setNamespaceAware(true);
      factory.setFeature("http://xml.org/sax/features/external-general-entities", false);
      factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
      Element root = factory.newDocumentBuilder().parse(schema.toFile()).getDocumentElement();
      for (Element child : children(root)) {
        String name = child.getAttribute("name");
        switch (child.getLocalName()) {
          case "element" ->
              typesOfElements
                  .computeIfAbsent(name, key -> new ArrayList<>())
                  .add(local(child.getAttribute("type")));
          case "simpleType", "complexType" ->
              types.computeIfAbsent(name, key -> new ArrayList<>()).add(child);
          default -> {}
        }
      }
    } catch (Exception e) {
      throw new IllegalStateException(schema.toString(), e);
    }
  }

  /** The types, by their local names, of an element's text; {@code boolean}, {@code DateType}. */
  Set<String> of(String element) {
    Set<String> found = new TreeSet<>();
    for (String type : typesOfElements.getOrDefault(element, List.of())) {
      if (!type.isEmpty()) {
        Set<String> behind = behind(type, 0);
        found.addAll(behind.isEmpty() ? Set.of(type) : behind);
      }
    }
    return found;
  }

  private Set<String> behind(String type, int depth) {
    Set<String> found = new TreeSet<>();
    for (Element declared : depth > DEEPEST ? List.<Element>of() : types(type)) {
      if (declared.getLocalName().equals("simpleType")) {
        addSimple(type, declared, depth, found);
      } else {
        child(declared, "simpleContent")
            .flatMap(content -> children(content).stream())
            .map(extension -> local(extension.getAttribute("base")))
            .forEach(
                base -> {
                  Set<String> inner = behind(base, depth + 1);
                  found.addAll(inner.isEmpty() ? Set.of(base) : inner);
                });
      }
    }
    return found;
  }

  private void addSimple(String type, Element declared, int depth, Set<String> found) {
    for (Element part : children(declared)) {
      if (part.getLocalName().equals("union")) {
        for (String member : part.getAttribute("memberTypes").trim().split("\\s+")) {
          found.addAll(behind(local(member), depth + 1));
        }
      } else if (part.getLocalName().equals("restriction")) {
        if (child(part, "enumeration").findAny().isPresent()) {
          found.add(type);
        } else {
          found.addAll(behind(local(part.getAttribute("base")), depth + 1));
        }
      }
    }
  }

  private List<Element> types(String name) {
    return types.getOrDefault(name, List.of());
  }

  private static Stream<Element> child(Element parent, String name) {
    return children(parent).stream().filter(element -> element.getLocalName().equals(name));
  }

  private static List<Element> children(Element parent) {
    List<Element> children = new ArrayList<>();
    for (Node node = parent.getFirstChild(); node != null; node = node.getNextSibling()) {
      if (node instanceof Element element && XSD.equals(element.getNamespaceURI())) {
        children.add(element);
      }
    }
    return children;
  }

  private static String local(String name) {
    return name.substring(name.indexOf(':') + 1);
  }
}
