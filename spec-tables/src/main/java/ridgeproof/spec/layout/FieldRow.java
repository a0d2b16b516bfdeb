package ridgeproof.spec.layout;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import ridgeproof.spec.rule.Aspect;
import ridgeproof.spec.rule.Matched;
import ridgeproof.spec.table.Source;
import ridgeproof.spec.table.Table;
import ridgeproof.spec.table.VersionRange;

/**
 * One row of a record layout: a field, or an information item of its subfields.
 *
 * @param number the field, or the first of a range of fields
 * @param last the last field of the range; the same as {@code number} for a single field
 * @param item counted from 1; empty for the row of the field itself
 * @param minLength characters in one value
 * @param maxLength characters in one value
 * @param minOccurs subfields when the field is there
 * @param maxOccurs subfields when the field is there, empty for no limit
 * @param bytes binary records: bytes of one value; empty for tagged records and for the rest of a
 *     record
 * @param isPublic whether reports may show the value; a value of any other row is masked
 * @param source where the field, its number and mnemonic are described
 * @param matched the document that the row was compared with, and what of the row agreed
 * @param practice what of the row the trade simply knows
 */
public record FieldRow(
    FieldNumber number,
    FieldNumber last,
    OptionalInt item,
    String mnemonic,
    String name,
    Presence presence,
    CharacterType characters,
    OptionalInt minLength,
    OptionalInt maxLength,
    int minOccurs,
    OptionalInt maxOccurs,
    Optional<ValueRule> values,
    OptionalInt bytes,
    boolean isPublic,
    VersionRange versions,
    Source source,
    Matched matched,
    Set<Aspect> practice) {

  public FieldRow {
    practice = Set.copyOf(practice);
  }

  /** Where one thing that the row says is written, and how that is known. */
  public Source source(Aspect aspect) {
    if (matched.has(aspect)) {
      return matched.by(source);
    }
    if (practice.contains(aspect)) {
      return source.known(Source.Knowledge.COMMON_PRACTICE);
    }
    return source.known() == Source.Knowledge.PUBLISHED
        ? source.known(Source.Knowledge.FROM_MEMORY)
        : source;
  }

  /** So much of a value that is too long is enough to see what was entered. */
  private static final int MIN_SHOWN = 8;

  /**
   * A public value as reports may show it: no more than the field holds, since a longer one may
   * have swallowed what follows it.
   */
  public String shown(String value) {
    int most = Math.max(maxLength.orElse(Integer.MAX_VALUE), MIN_SHOWN);
    int length = value.codePointCount(0, value.length());
    return length <= most
        ? value
        : value.substring(0, value.offsetByCodePoints(0, most)) + "\u2026";
  }

  public boolean covers(FieldNumber field) {
    return number.compareTo(field) <= 0 && last.compareTo(field) >= 0;
  }

  /** Whether the row stands for a run of fields that the standard leaves to users. */
  public boolean isRange() {
    return !number.equals(last);
  }

  public static FieldRow of(Table.Row row, int recordType) {
    String numbers = row.required("field");
    int dash = numbers.indexOf('-');
    FieldNumber first =
        row.parse("field", text -> FieldNumber.parse(dash < 0 ? text : text.substring(0, dash)));
    FieldNumber last =
        row.parse("field", text -> FieldNumber.parse(dash < 0 ? text : text.substring(dash + 1)));
    if (first.recordType() != recordType || first.compareTo(last) > 0) {
      throw row.error("field", numbers + " does not belong to Type-" + recordType);
    }
    boolean isPublic = row.parse("public", FieldRow::yes);
    if (isPublic && !first.equals(last)) {
      throw row.error("public", "a run of fields that users define cannot be public");
    }
    String most = row.text("max_occurs");
    return new FieldRow(
        first,
        last,
        row.integer("item"),
        row.text("mnemonic"),
        row.required("name"),
        row.parse("condition", Presence::parse),
        row.parse("characters", CharacterType::parse),
        row.integer("min_length"),
        row.integer("max_length"),
        row.integer("min_occurs").orElse(1),
        most.equals("*")
            ? OptionalInt.empty()
            : OptionalInt.of(row.integer("max_occurs").orElse(1)),
        row.optional("values").map(cell -> row.parse("values", ValueRule::parse)),
        row.text("bytes").equals("rest") ? OptionalInt.empty() : row.integer("bytes"),
        isPublic,
        row.versions(),
        row.source(),
        row.optional("matched")
            .map(cell -> row.parse("matched", Matched::parse))
            .orElse(Matched.NOTHING),
        row.optional("practice")
            .map(cell -> row.parse("practice", Aspect::parse))
            .orElse(Set.of()));
  }

  private static boolean yes(String cell) {
    return switch (cell) {
      case "yes" -> true;
      case "", "no" -> false;
      default -> throw new IllegalArgumentException("neither yes nor no");
    };
  }
}
