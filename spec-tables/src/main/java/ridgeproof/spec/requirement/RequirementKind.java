package ridgeproof.spec.requirement;

import ridgeproof.spec.layout.FieldRow;
import ridgeproof.spec.layout.Presence.Demand;
import ridgeproof.spec.layout.ValueRule;
import ridgeproof.spec.rule.Aspect;
import ridgeproof.spec.table.Source;

/** What a single requirement of a layout row is about, with the rule that reports it. */
public enum RequirementKind {
  MANDATORY("mandatory", "RP-FLD-001", "RP-FLD-002", Aspect.PRESENCE),
  FORBIDDEN("forbidden", "RP-FLD-009", "RP-FLD-009", Aspect.PRESENCE),
  DEPRECATED("deprecated", "RP-FLD-010", "RP-FLD-010", Aspect.PRESENCE),
  /** An optional field that is there says something. */
  NOT_EMPTY("not-empty", "RP-FLD-016", "RP-FLD-016", Aspect.PRESENCE),
  /** The field is only used in the editions that have it. */
  EDITION("edition", "RP-FLD-011", "RP-FLD-011", Aspect.PRESENCE),
  MIN_OCCURS("min-occurs", "RP-FLD-006", "RP-FLD-006", Aspect.OCCURS),
  MAX_OCCURS("max-occurs", "RP-FLD-007", "RP-FLD-007", Aspect.OCCURS),
  /** No more items in a subfield than the layout has. */
  ITEMS("items", "RP-FLD-012", "RP-FLD-012", Aspect.ITEMS),
  CHARACTERS("characters", "RP-FLD-005", "RP-FLD-005", Aspect.CHARACTERS),
  MIN_LENGTH("min-length", "RP-FLD-003", "RP-FLD-003", Aspect.LENGTH),
  MAX_LENGTH("max-length", "RP-FLD-004", "RP-FLD-004", Aspect.LENGTH),
  VALUES("values", "RP-FLD-008", "RP-FLD-008", Aspect.VALUES);

  private static final String CODE_RULE = "RP-COD-001";

  private final String label;
  private final String ofField;
  private final String ofItem;
  private final Aspect aspect;

  RequirementKind(String label, String ofField, String ofItem, Aspect aspect) {
    this.label = label;
    this.ofField = ofField;
    this.ofItem = ofItem;
    this.aspect = aspect;
  }

  /** Where the row has this requirement from. */
  public Source source(FieldRow row) {
    return row.source(aspect);
  }

  /** The kind as ids write it, {@code max-length}. */
  public String label() {
    return label;
  }

  /** The row of the catalogue that reports a departure from this requirement of the row. */
  public String rule(FieldRow row) {
    if (this == VALUES && row.values().filter(ValueRule::namesCodes).isPresent()) {
      return CODE_RULE;
    }
    return row.item().isPresent() ? ofItem : ofField;
  }

  /** What a clause of a condition asks; an optional field has to say something. */
  public static RequirementKind of(Demand demand) {
    return switch (demand) {
      case MANDATORY -> MANDATORY;
      case FORBIDDEN -> FORBIDDEN;
      case DEPRECATED -> DEPRECATED;
      case OPTIONAL -> NOT_EMPTY;
    };
  }
}
