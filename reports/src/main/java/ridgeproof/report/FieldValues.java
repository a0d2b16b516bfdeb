package ridgeproof.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import ridgeproof.spec.FieldNumber;
import ridgeproof.spec.FieldRow;
import ridgeproof.spec.SpecTables;
import ridgeproof.transaction.ByteSource;
import ridgeproof.transaction.Field;
import ridgeproof.transaction.LogicalRecord;
import ridgeproof.transaction.Subfield;

/**
 * The values of fields as a report may show them: inert, and masked where they tell of a person.
 */
final class FieldValues {

  private static final int FIRST_BYTES = 8;

  private final SpecTables tables;
  private final int version;
  private final boolean showPersonal;

  FieldValues(SpecTables tables, int version, boolean showPersonal) {
    this.tables = tables;
    this.version = version;
    this.showPersonal = showPersonal;
  }

  /** The row of the layout, if the version has the field. */
  Optional<FieldRow> row(FieldNumber number) {
    return tables.layout(number.recordType()).field(number, version);
  }

  /** Whether a value tells of a person; what no layout knows might. */
  boolean isPersonal(FieldNumber number, int item) {
    return row(number).map(FieldRow::personal).orElse(number.recordType() != 1)
        || tables.layout(number.recordType()).items(number, version).stream()
            .filter(row -> row.item().orElse(0) == item)
            .anyMatch(FieldRow::personal);
  }

  /** Whether any part of a field tells of a person. */
  boolean isPersonal(FieldNumber number) {
    return row(number).map(FieldRow::personal).orElse(number.recordType() != 1)
        || tables.layout(number.recordType()).items(number, version).stream()
            .anyMatch(FieldRow::personal);
  }

  /** One item. */
  String item(FieldNumber number, int item, String text) {
    return !showPersonal && !text.isEmpty() && isPersonal(number, item)
        ? SafeText.MASKED
        : SafeText.of(text);
  }

  /** The items of a subfield in one line. */
  String items(FieldNumber number, Subfield subfield) {
    List<String> shown = new ArrayList<>();
    int masked = 0;
    for (int item = 1; item <= subfield.items().size(); item++) {
      String text = item(number, item, subfield.text(item));
      masked += text.equals(SafeText.MASKED) ? 1 : 0;
      shown.add(text);
    }
    return masked > 1 && masked == shown.size()
        ? masked + " items " + SafeText.MASKED
        : String.join(" | ", shown);
  }

  /** How much data a field holds, and how it begins. */
  static String data(LogicalRecord record, Field field) {
    ByteSource bytes = record.dataOf(field);
    StringBuilder hex = new StringBuilder();
    for (int i = 0; i < Math.min(FIRST_BYTES, bytes.length()); i++) {
      hex.append(String.format(Locale.ROOT, "%02X ", bytes.byteAt(i)));
    }
    return String.format(
        Locale.ROOT,
        "%,d bytes of data: %s%s",
        bytes.length(),
        hex.toString().strip(),
        bytes.length() > FIRST_BYTES ? " ..." : "");
  }
}
