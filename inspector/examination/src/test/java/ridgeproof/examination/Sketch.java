package ridgeproof.examination;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import ridgeproof.spec.layout.Reference;

/**
 * A record before it is written: the subfields of each field by its number after the point.
 *
 * @param version of the transaction
 */
public record Sketch(int type, int version, SortedMap<Integer, List<List<String>>> fields) {

  /** What stands for the bytes of an image. */
  static final List<List<String>> DATA = List.of(List.of("data"));

  Sketch(int type, int version) {
    this(type, version, new TreeMap<>());
  }

  public Sketch with(int field, List<List<String>> subfields) {
    SortedMap<Integer, List<List<String>>> changed = new TreeMap<>(fields);
    changed.put(field, subfields);
    return new Sketch(type, version, changed);
  }

  public Sketch without(int field) {
    SortedMap<Integer, List<List<String>>> changed = new TreeMap<>(fields);
    changed.remove(field);
    return new Sketch(type, version, changed);
  }

  /** This record and the fields of the other that it has not. */
  Sketch and(Map<Integer, List<List<String>>> others) {
    SortedMap<Integer, List<List<String>>> changed = new TreeMap<>(others);
    changed.putAll(fields);
    return new Sketch(type, version, changed);
  }

  boolean has(int field) {
    return fields.containsKey(field);
  }

  /** One item of the first subfield replaced; items count from 1. */
  public Sketch withItem(int field, int item, String text) {
    List<List<String>> subfields = new ArrayList<>(fields.get(field));
    List<String> items = new ArrayList<>(subfields.get(0));
    while (items.size() < item) {
      items.add("");
    }
    items.set(item - 1, text);
    subfields.set(0, items);
    return with(field, subfields);
  }

  /** What references of a field's condition stand for. */
  Function<Reference, List<String>> values() {
    return values(List.of());
  }

  /** What references of an item's condition stand for in that subfield. */
  Function<Reference, List<String>> values(List<String> subfield) {
    return reference -> {
      if (reference instanceof Reference.OfVersion) {
        return List.of(Integer.toString(version));
      }
      if (reference instanceof Reference.OfSameSubfield same) {
        return item(subfield, same.item());
      }
      if (reference instanceof Reference.OfItem item) {
        return texts(item.number().recordType(), item.number().field(), item.item());
      }
      Reference.OfField field = (Reference.OfField) reference;
      return texts(field.number().recordType(), field.number().field(), 1);
    };
  }

  private List<String> texts(int recordType, int field, int item) {
    if (recordType != type) {
      throw new AssertionError("a condition of Type-" + type + " looks at Type-" + recordType);
    }
    return fields.getOrDefault(field, List.of()).stream()
        .flatMap(subfield -> item(subfield, item).stream())
        .toList();
  }

  private static List<String> item(List<String> subfield, int item) {
    return item <= subfield.size() && !subfield.get(item - 1).isEmpty()
        ? List.of(subfield.get(item - 1))
        : List.of();
  }
}
