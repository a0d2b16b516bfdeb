package ridgeproof.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import ridgeproof.imagery.ImageFormat;
import ridgeproof.imagery.header.ImageHeaders;
import ridgeproof.report.words.Counted;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.layout.FieldRow;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.record.Field;
import ridgeproof.transaction.record.LogicalRecord;
import ridgeproof.transaction.record.Subfield;

/**
 * The values of fields as a report may show them: inert, and masked where no row says that they are
 * public.
 */
public final class FieldValues {

  private static final int FIRST_BYTES = 8;

  private final SpecTables tables;
  private final int version;
  private final boolean showPersonal;

  public FieldValues(SpecTables tables, int version, boolean showPersonal) {
    this.tables = tables;
    this.version = version;
    this.showPersonal = showPersonal;
  }

  /** The row of the layout, if the version has the field. */
  public Optional<FieldRow> row(FieldNumber number) {
    return tables.layout(number.recordType()).field(number, version);
  }

  /** The row of an item, if the version has it. */
  Optional<FieldRow> row(FieldNumber number, int item) {
    return tables.layout(number.recordType()).item(number, item, version);
  }

  /** Whether a value is masked: it is shown only where its row says that it is public. */
  public boolean isPrivate(FieldNumber number, int item) {
    return publicRow(number, item).isEmpty();
  }

  private Optional<FieldRow> publicRow(FieldNumber number, int item) {
    return tables
        .layout(number.recordType())
        .item(number, item, version)
        .filter(FieldRow::isPublic);
  }

  /** Whether a value is masked or shown in part. */
  public boolean isCut(FieldNumber number, int item, String text) {
    return publicRow(number, item).filter(row -> row.shown(text).equals(text)).isEmpty();
  }

  /** Whether any part of a field is masked, so far as rows describe it. */
  boolean isPrivate(FieldNumber number) {
    return !tables.layout(number.recordType()).isPublic(number, version);
  }

  /** One item. */
  public String item(FieldNumber number, int item, String text) {
    if (showPersonal || text.isEmpty()) {
      return TextSanitizer.of(text);
    }
    return publicRow(number, item)
        .map(row -> TextSanitizer.of(row.shown(text)))
        .orElse(TextSanitizer.MASKED);
  }

  /** The items of a subfield in one line. */
  public String items(FieldNumber number, Subfield subfield) {
    List<String> shown = new ArrayList<>();
    int masked = 0;
    for (int item = 1; item <= subfield.items().size(); item++) {
      String text = item(number, item, subfield.text(item));
      masked += text.equals(TextSanitizer.MASKED) ? 1 : 0;
      shown.add(text);
    }
    return masked > 1 && masked == shown.size()
        ? masked + " items " + TextSanitizer.MASKED
        : String.join(" | ", shown);
  }

  /** How much data a field holds, and how it begins where that tells only how it is coded. */
  public String data(LogicalRecord record, Field field) {
    ByteSource bytes = record.dataOf(field);
    boolean coded = ImageHeaders.formatOf(bytes) != ImageFormat.RAW;
    if (!showPersonal && (isPrivate(field.number()) || !coded)) {
      return Counted.of(bytes.length(), "byte") + " of data";
    }
    StringBuilder hex = new StringBuilder();
    for (int i = 0; i < Math.min(FIRST_BYTES, bytes.length()); i++) {
      hex.append(String.format(Locale.ROOT, "%02X ", bytes.byteAt(i)));
    }
    return String.format(
        Locale.ROOT,
        "%s of data: %s%s",
        Counted.of(bytes.length(), "byte"),
        hex.toString().strip(),
        bytes.length() > FIRST_BYTES ? " ..." : "");
  }
}
