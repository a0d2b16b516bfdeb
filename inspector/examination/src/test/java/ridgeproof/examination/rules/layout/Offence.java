package ridgeproof.examination.rules.layout;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import ridgeproof.examination.Sketch;
import ridgeproof.examination.SketchBuilder;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.FieldRow;
import ridgeproof.spec.layout.RecordTypeRow;
import ridgeproof.spec.requirement.Requirement;
import ridgeproof.spec.requirement.ViolatingValues;

/** Breaks one requirement in a conforming record, and nothing else. */
public final class Offence {

  private static final int LENGTH_FIELD = 1;

  private final SpecTables tables;
  private final SketchBuilder builder;
  private final ViolatingValues departing;

  public Offence(SpecTables tables, SketchBuilder builder) {
    this.tables = tables;
    this.builder = builder;
    this.departing = new ViolatingValues(tables);
  }

  /**
   * The record with the requirement broken, and with whatever fields the broken value now demands.
   */
  public Sketch against(Requirement requirement, Sketch conforming) {
    int field = requirement.row().number().field();
    return builder.completed(broken(requirement, conforming, field), Set.of(field));
  }

  private Sketch broken(Requirement requirement, Sketch sketch, int field) {
    FieldRow row = requirement.row();
    int item = row.item().orElse(1);
    return switch (requirement.kind()) {
      case MANDATORY -> row.item().isEmpty() ? left(sketch, field) : blank(requirement, sketch);
      case FORBIDDEN, DEPRECATED ->
          row.item().isEmpty()
              ? sketch.with(field, builder.filled(row, sketch.version()))
              : sketch.withItem(field, item, builder.values().of(row, sketch.version()));
      case NOT_EMPTY -> sketch.with(field, List.of(List.of("")));
      case EDITION -> sketch.with(field, builder.filled(row, editionOf(row)));
      case MIN_OCCURS -> repeated(sketch, field, row.minOccurs() - 1);
      case MAX_OCCURS -> repeated(sketch, field, row.maxOccurs().getAsInt() + 1);
      case ITEMS -> sketch.withItem(field, mostItems(row, sketch.version()) + 1, "1");
      case CHARACTERS, MIN_LENGTH, MAX_LENGTH, VALUES ->
          sketch.withItem(field, item, departing(requirement, sketch, item));
    };
  }

  /** A record cannot begin without the tag of its length, so that one is emptied. */
  private static Sketch left(Sketch sketch, int field) {
    return field == LENGTH_FIELD ? sketch.with(field, List.of(List.of(""))) : sketch.without(field);
  }

  /** Where the item is alone, a second subfield keeps the field from being empty. */
  private Sketch blank(Requirement requirement, Sketch sketch) {
    int field = requirement.row().number().field();
    int item = requirement.row().item().getAsInt();
    if (items(requirement.row(), sketch.version()).size() > 1) {
      return sketch.withItem(field, item, "");
    }
    return sketch.with(field, List.of(sketch.fields().get(field).get(0), List.of("")));
  }

  private static Sketch repeated(Sketch sketch, int field, int times) {
    return sketch.with(field, Collections.nCopies(times, sketch.fields().get(field).get(0)));
  }

  private int mostItems(FieldRow row, int version) {
    List<FieldRow> items = items(row, version);
    return items.isEmpty() ? 1 : ItemPlan.of(items).most();
  }

  private List<FieldRow> items(FieldRow row, int version) {
    return tables.layout(row.number().recordType()).items(row.number(), version);
  }

  /** Any edition that has the field. */
  private int editionOf(FieldRow row) {
    RecordTypeRow type = tables.recordType(row.number().recordType()).orElseThrow();
    return tables.codes("versions").codes().stream()
        .map(code -> Integer.parseInt(code.code()))
        .filter(row.versions()::contains)
        .filter(type.versions()::contains)
        .findFirst()
        .orElseThrow();
  }

  private String departing(Requirement requirement, Sketch sketch, int item) {
    FieldRow row = requirement.row();
    Optional<String> text =
        switch (requirement.kind()) {
          case CHARACTERS -> Optional.of(foreign(row, sketch, item));
          case MIN_LENGTH -> departing.tooShort(row);
          case MAX_LENGTH -> departing.tooLong(row);
          default ->
              row.bytes().isPresent()
                  ? departing.refusedNumber(row, sketch.version()).map(number -> "" + number)
                  : departing.refused(row, sketch.version());
        };
    return text.orElseThrow(() -> new AssertionError(requirement.id() + ": no departing value"));
  }

  /** The conforming value with its last character replaced by one that is not allowed. */
  private String foreign(FieldRow row, Sketch sketch, int item) {
    String text = sketch.fields().get(row.number().field()).get(0).get(item - 1);
    return text.substring(0, text.length() - 1)
        + departing.foreignCharacter(row.characters()).orElseThrow();
  }
}
