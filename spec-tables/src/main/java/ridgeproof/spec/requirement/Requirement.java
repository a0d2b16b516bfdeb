package ridgeproof.spec.requirement;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import ridgeproof.spec.layout.FieldRow;
import ridgeproof.spec.table.Source;

/**
 * A single thing that a layout row asks of a transaction.
 *
 * @param id stable: {@code 14.013/values}, {@code 14.021.3/max-length} of an item, {@code
 *     10.023@0500/mandatory} where the field has rows for several editions
 * @param field the row of the field
 * @param row the row that asks; the field's own, or that of one of its items
 * @param clause which clause of the row's condition, from 0; empty where it is not about presence
 * @param versions the editions in which it holds, by field 1.002, the newest first
 * @param rule the row of the catalogue that reports a departure
 * @param shadow why no transaction can break this one alone; empty where one can
 */
public record Requirement(
    String id,
    RequirementKind kind,
    FieldRow field,
    FieldRow row,
    OptionalInt clause,
    List<Integer> versions,
    String rule,
    Optional<String> shadow) {

  public Requirement {
    versions = List.copyOf(versions);
  }

  /** Whether a transaction can depart from it; only such requirements count. */
  public boolean isObservable() {
    return shadow.isEmpty();
  }

  public int recordType() {
    return field.number().recordType();
  }

  public Source source() {
    return kind.source(row);
  }
}
