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
 * The values of fields as a report may show them: inert, and masked where no row says that they are
 * public.
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

  /** Whether a value is masked: it is shown only where its row says that it is public. */
  boolean isPrivate(FieldNumber number, int item) {
    return !tables.layout(number.recordType()).isPublic(number, item, version);
  }

  /** Whether any part of a field is masked, so far as rows describe it. */
  boolean isPrivate(FieldNumber number) {
    return !tables.layout(number.recordType()).isPublic(number, version);
  }

  /** One item. */
  String item(FieldNumber number, int item, String text) {
    return !showPersonal && !text.isEmpty() && isPrivate(number, item)
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
  String data(LogicalRecord record, Field field) {
    ByteSource bytes = record.dataOf(field);
    if (!showPersonal && isPrivate(field.number())) {
      return String.format(Locale.ROOT, "%,d bytes of data %s", bytes.length(), SafeText.MASKED);
    }
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
