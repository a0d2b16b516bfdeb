package ridgeproof.examination;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.FieldRow;
import ridgeproof.spec.layout.Presence.Demand;
import ridgeproof.spec.layout.RecordLayout;

/** Completes a record with the fields that its layout demands of it. */
public final class SketchBuilder {

  private final SpecTables tables;
  private final ConformingValues values;
  private final Map<String, Sketch> smallest = new HashMap<>();

  SketchBuilder(SpecTables tables) {
    this.tables = tables;
    this.values = new ConformingValues(tables);
  }

  /** The smallest record of a type that conforms. */
  Sketch smallest(int type, int version) {
    return smallest.computeIfAbsent(
        type + "@" + version,
        key ->
            complete(new Sketch(type, version), Set.of())
                .orElseThrow(() -> new AssertionError(key + ": no record satisfies the rows")));
  }

  /**
   * The record with every field that is demanded of it.
   *
   * @param never fields that are not to be added, whatever is demanded
   * @return empty where the record has a field that is forbidden to it
   */
  Optional<Sketch> complete(Sketch start, Set<Integer> never) {
    Sketch whole = completed(start, never);
    return tables.layout(start.type()).rows().stream()
            .filter(row -> isFieldRow(row, start.version()))
            .filter(row -> whole.has(row.number().field()))
            .anyMatch(row -> demand(row, whole) == Demand.FORBIDDEN)
        ? Optional.empty()
        : Optional.of(whole);
  }

  /** As {@link #complete}, whether or not the record has a field that is forbidden to it. */
  public Sketch completed(Sketch start, Set<Integer> never) {
    RecordLayout layout = tables.layout(start.type());
    Sketch sketch = start;
    boolean changed = true;
    while (changed) {
      changed = false;
      for (FieldRow row : layout.rows()) {
        int field = row.number().field();
        if (isFieldRow(row, start.version())
            && !sketch.has(field)
            && !never.contains(field)
            && demand(row, sketch) == Demand.MANDATORY) {
          sketch = sketch.with(field, filled(row, start.version()));
          changed = true;
        }
      }
    }
    return sketch;
  }

  static Demand demand(FieldRow row, Sketch sketch) {
    return row.presence().demandFor(sketch.values());
  }

  private static boolean isFieldRow(FieldRow row, int version) {
    return row.item().isEmpty() && !row.isRange() && row.versions().contains(version);
  }

  /** A conforming value of the field, with every item it may have. */
  public List<List<String>> filled(FieldRow row, int version) {
    if (isData(row)) {
      return Sketch.DATA;
    }
    List<FieldRow> items = tables.layout(row.number().recordType()).items(row.number(), version);
    List<List<String>> subfields = new ArrayList<>();
    for (int i = 0; i < row.minOccurs(); i++) {
      subfields.add(
          items.isEmpty() ? List.of(values.of(row, version)) : filledItems(items, version));
    }
    return subfields;
  }

  private List<String> filledItems(List<FieldRow> items, int version) {
    List<String> texts = new ArrayList<>();
    for (FieldRow item : items) {
      while (texts.size() < item.item().getAsInt() - 1) {
        texts.add("");
      }
      texts.add(values.of(item, version));
    }
    return texts;
  }

  boolean isData(FieldRow row) {
    return tables
        .recordType(row.number().recordType())
        .flatMap(type -> type.imageField())
        .filter(row.number()::equals)
        .isPresent();
  }

  public ConformingValues values() {
    return values;
  }
}
