package ridgeproof.examination.safecopy;

import java.util.Optional;
import java.util.regex.Pattern;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.layout.FieldRow;
import ridgeproof.spec.layout.ValueRule;
import ridgeproof.spec.privacy.NonIdentifyingField;
import ridgeproof.transaction.record.LogicalRecord;

/** Decides which values a safe copy keeps: those that are known to tell of nobody. */
final class RetainedValues {

  /** LEN and IDC, which every record has, of whatever type. */
  private static final int LAST_OF_LAYOUT = 2;

  private static final Pattern LENGTH_OR_IDC = Pattern.compile("[0-9]{1,9}");

  /** A code that no table has may yet be one, as long as it is too short to say much. */
  private static final Pattern SHORT_CODE = Pattern.compile("[A-Z0-9.+-]{1,5}");

  private static final int LONGEST = 12;

  private final SpecTables tables;
  private final int version;

  RetainedValues(SpecTables tables, int version) {
    this.tables = tables;
    this.version = version;
  }

  /**
   * Whether an item stays as it is.
   *
   * @param item counted from 1
   */
  boolean keeps(LogicalRecord record, FieldNumber number, int item, String text) {
    if (number.recordType() == record.type() && number.field() <= LAST_OF_LAYOUT) {
      return LENGTH_OR_IDC.matcher(text).matches();
    }
    Optional<NonIdentifyingField> row = row(number, item);
    if (row.isEmpty() || text.length() > LONGEST) {
      return false;
    }
    Optional<ValueRule> allowed =
        row.get().only().or(() -> layoutRow(number, item).flatMap(FieldRow::values));
    return allowed.filter(rule -> rule.matches(text, this::knows)).isPresent()
        || row.get().only().isEmpty() && SHORT_CODE.matcher(text).matches();
  }

  /** Whether a field of a binary record, a number of a few bytes, stays. */
  boolean keepsNumber(FieldNumber number) {
    return row(number, 1).isPresent();
  }

  /** The row that says what an item may be. */
  Optional<FieldRow> layoutRow(FieldNumber number, int item) {
    return tables.layout(number.recordType()).items(number, version).stream()
        .filter(row -> row.item().orElse(0) == item)
        .findFirst()
        .or(() -> tables.layout(number.recordType()).field(number, version));
  }

  boolean knows(String table, String code) {
    return tables.codes(table).find(code, version).isPresent();
  }

  /** A number that this version leaves to users may hold anything, whatever others make of it. */
  private Optional<NonIdentifyingField> row(FieldNumber number, int item) {
    return tables
        .layout(number.recordType())
        .field(number, version)
        .filter(row -> !row.isRange())
        .flatMap(row -> tables.harmless().field(number, item));
  }
}
