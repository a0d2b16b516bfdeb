package ridgeproof.examination;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.layout.FieldRow;
import ridgeproof.spec.layout.Presence.Clause;
import ridgeproof.spec.layout.Presence.Demand;
import ridgeproof.spec.layout.RecordLayout;
import ridgeproof.spec.layout.Reference;
import ridgeproof.spec.requirement.Requirement;
import ridgeproof.spec.requirement.RequirementKind;

/**
 * Finds a conforming record in which a requirement binds, by trying the values of its condition.
 */
final class ClauseSolver {

  /** A value for what a condition looks at; empty text where it is to be absent. */
  private record Choice(Reference reference, String text) {}

  private final SpecTables tables;
  private final SketchBuilder builder;

  ClauseSolver(SpecTables tables, SketchBuilder builder) {
    this.tables = tables;
    this.builder = builder;
  }

  /** The record, in the newest edition in which there is one. */
  Sketch solve(Requirement requirement) {
    for (int version : requirement.versions()) {
      Optional<Sketch> found =
          requirement.kind() == RequirementKind.EDITION
              ? Optional.of(builder.smallest(requirement.recordType(), version))
              : solve(requirement, version);
      if (found.isPresent()) {
        return found.get();
      }
    }
    throw new AssertionError(requirement.id() + ": no record in which it binds");
  }

  private Optional<Sketch> solve(Requirement requirement, int version) {
    FieldRow field = requirement.field();
    boolean ofField = requirement.row().item().isEmpty() && requirement.clause().isPresent();
    boolean present = !ofField || requirement.kind() == RequirementKind.MANDATORY;
    for (List<Choice> choices : choices(field, version)) {
      Optional<Sketch> sketch = sketch(field, version, choices, present);
      if (sketch.isEmpty() || !binds(requirement, ofField, sketch.get())) {
        continue;
      }
      if (requirement.row().item().isEmpty()) {
        return sketch;
      }
      Optional<Sketch> withItems = solveItems(requirement, sketch.get());
      if (withItems.isPresent()) {
        return withItems;
      }
    }
    return Optional.empty();
  }

  private static boolean binds(Requirement requirement, boolean ofField, Sketch sketch) {
    FieldRow field = requirement.field();
    if (ofField) {
      return deciding(field, sketch.values()) == requirement.clause().getAsInt();
    }
    Demand demand = SketchBuilder.demand(field, sketch);
    return demand == Demand.MANDATORY || demand == Demand.OPTIONAL;
  }

  /** The clause that decides, or the number of clauses where none applies. */
  private static int deciding(FieldRow row, Function<Reference, List<String>> values) {
    List<Clause> clauses = row.presence().clauses();
    int i = 0;
    while (i < clauses.size()
        && !clauses.get(i).condition().map(condition -> condition.holds(values)).orElse(true)) {
      i++;
    }
    return i;
  }

  private Optional<Sketch> sketch(
      FieldRow field, int version, List<Choice> choices, boolean present) {
    Sketch start = new Sketch(field.number().recordType(), version);
    Set<Integer> never = new TreeSet<>();
    for (Choice choice : choices) {
      int number = numberOf(choice.reference()).field();
      if (choice.text().isEmpty()) {
        never.add(number);
      } else {
        start = with(start, choice);
      }
    }
    Set<Integer> left = Set.copyOf(never);
    int own = field.number().field();
    if (present) {
      start = start.with(own, builder.filled(field, version));
    } else {
      never.add(own);
    }
    return builder.complete(start, never).filter(whole -> noneIsMissing(whole, left));
  }

  private boolean noneIsMissing(Sketch sketch, Set<Integer> left) {
    RecordLayout layout = tables.layout(sketch.type());
    return left.stream()
        .flatMap(n -> layout.field(new FieldNumber(sketch.type(), n), sketch.version()).stream())
        .noneMatch(row -> SketchBuilder.demand(row, sketch) == Demand.MANDATORY);
  }

  private Sketch with(Sketch sketch, Choice choice) {
    FieldNumber number = numberOf(choice.reference());
    FieldRow row = tables.layout(number.recordType()).field(number, sketch.version()).orElseThrow();
    Sketch filled =
        sketch.has(number.field())
            ? sketch
            : sketch.with(number.field(), builder.filled(row, sketch.version()));
    return builder.isData(row)
        ? filled
        : filled.withItem(number.field(), itemOf(choice.reference()), choice.text());
  }

  /** Every way to set what the field's condition looks at, the fewest values first. */
  private List<List<Choice>> choices(FieldRow field, int version) {
    List<List<Choice>> all = List.of(List.of());
    for (Map.Entry<Reference, Set<String>> entry : conditionValues(field, version).entrySet()) {
      List<Choice> options = new ArrayList<>();
      options.add(new Choice(entry.getKey(), ""));
      Optional<FieldRow> row = rowOf(entry.getKey(), version);
      if (row.isPresent()) {
        values(row.get(), entry.getValue(), version)
            .forEach(text -> options.add(new Choice(entry.getKey(), text)));
      }
      all = product(all, options);
    }
    return all;
  }

  /** What the field's condition looks at, and what the conditions of those fields look at. */
  private Map<Reference, Set<String>> conditionValues(FieldRow field, int version) {
    Map<Reference, Set<String>> all =
        new LinkedHashMap<>(ConditionValues.of(field.presence().clauses()));
    for (Reference reference : List.copyOf(all.keySet())) {
      tables
          .layout(field.number().recordType())
          .field(numberOf(reference), version)
          .map(row -> ConditionValues.of(row.presence().clauses()))
          .ifPresent(further -> further.forEach(all::putIfAbsent));
    }
    all.keySet().removeIf(reference -> numberOf(reference).equals(field.number()));
    return all;
  }

  /** The values to try: those of the condition, and others where it names some. */
  private Set<String> values(FieldRow row, Set<String> compared, int version) {
    if (builder.isData(row)) {
      return Set.of("data");
    }
    Set<String> texts = new LinkedHashSet<>();
    compared.stream()
        .filter(text -> builder.values().conforms(row, text, version))
        .forEach(texts::add);
    texts.add(builder.values().of(row, version));
    if (!compared.isEmpty()) {
      texts.addAll(builder.values().several(row, version));
    }
    return texts;
  }

  private static List<List<Choice>> product(List<List<Choice>> all, List<Choice> options) {
    List<List<Choice>> product = new ArrayList<>();
    for (Choice option : options) {
      for (List<Choice> choices : all) {
        List<Choice> longer = new ArrayList<>(choices);
        longer.add(option);
        product.add(longer);
      }
    }
    return product;
  }

  private Optional<FieldRow> rowOf(Reference reference, int version) {
    FieldNumber number = numberOf(reference);
    RecordLayout layout = tables.layout(number.recordType());
    int item = itemOf(reference);
    if (layout.field(number, version).isEmpty()) {
      return Optional.empty();
    }
    List<FieldRow> items = layout.items(number, version);
    return items.isEmpty()
        ? layout.field(number, version)
        : items.stream().filter(row -> row.item().getAsInt() == item).findFirst();
  }

  private static FieldNumber numberOf(Reference reference) {
    return reference instanceof Reference.OfItem item
        ? item.number()
        : ((Reference.OfField) reference).number();
  }

  private static int itemOf(Reference reference) {
    return reference instanceof Reference.OfItem item ? item.item() : 1;
  }

  /** The record with items for which the requirement of an item binds. */
  private Optional<Sketch> solveItems(Requirement requirement, Sketch sketch) {
    FieldRow row = requirement.row();
    int field = row.number().field();
    List<FieldRow> items = tables.layout(sketch.type()).items(row.number(), sketch.version());
    for (List<Choice> choices : itemChoices(row, items, sketch.version())) {
      Sketch changed = sketch;
      for (Choice choice : choices) {
        changed = changed.withItem(field, sameSubfield(choice), choice.text());
      }
      List<String> subfield = changed.fields().get(field).get(0);
      Function<Reference, List<String>> values = changed.values(subfield);
      boolean binds =
          requirement.clause().isEmpty()
              || deciding(row, values) == requirement.clause().getAsInt();
      if (binds && items.stream().allMatch(item -> satisfied(item, subfield, values))) {
        return Optional.of(changed);
      }
    }
    return Optional.empty();
  }

  private static boolean satisfied(
      FieldRow item, List<String> subfield, Function<Reference, List<String>> values) {
    boolean there = !subfield.get(item.item().getAsInt() - 1).isEmpty();
    return switch (item.presence().demandFor(values)) {
      case MANDATORY -> there;
      case FORBIDDEN, DEPRECATED -> !there;
      case OPTIONAL -> true;
    };
  }

  private List<List<Choice>> itemChoices(FieldRow row, List<FieldRow> items, int version) {
    List<List<Choice>> all = List.of(List.of());
    for (Map.Entry<Reference, Set<String>> entry :
        ConditionValues.of(row.presence().clauses()).entrySet()) {
      int number = ((Reference.OfSameSubfield) entry.getKey()).item();
      FieldRow other =
          items.stream()
              .filter(item -> item.item().getAsInt() == number)
              .findFirst()
              .orElseThrow(() -> new AssertionError(row.number() + ": no item " + number));
      List<Choice> options = new ArrayList<>();
      values(other, entry.getValue(), version)
          .forEach(text -> options.add(new Choice(entry.getKey(), text)));
      options.add(new Choice(entry.getKey(), ""));
      all = product(all, options);
    }
    return all;
  }

  private static int sameSubfield(Choice choice) {
    return ((Reference.OfSameSubfield) choice.reference()).item();
  }
}
