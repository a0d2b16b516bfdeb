package ridgeproof.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import ridgeproof.spec.FieldRow;
import ridgeproof.spec.SpecTables;
import ridgeproof.transaction.ByteRange;
import ridgeproof.transaction.ByteSource;
import ridgeproof.transaction.Field;
import ridgeproof.transaction.LogicalRecord;
import ridgeproof.transaction.Subfield;
import ridgeproof.transaction.Transaction;

/** The file as it is: every byte in a record and a field, with its offset. */
public final class LayoutListing {

  private static final int FIRST_BYTES = 8;
  private static final int MOST_SUBFIELDS = 20;

  private final Transaction transaction;
  private final SpecTables tables;
  private final RenderOptions options;
  private final Wording wording;
  private final StringBuilder out = new StringBuilder();

  private LayoutListing(Transaction transaction, SpecTables tables, RenderOptions options) {
    this.transaction = transaction;
    this.tables = tables;
    this.options = options;
    this.wording = new Wording(tables);
  }

  public static String render(
      FileFacts file, Transaction transaction, SpecTables tables, RenderOptions options) {
    LayoutListing listing = new LayoutListing(transaction, tables, options);
    listing.out.append(
        String.format(Locale.ROOT, "%s  %,d bytes%n", SafeText.of(file.name()), file.bytes()));
    listing.out.append("  offset   length  what\n");
    transaction.records().forEach(listing::record);
    transaction.unread().forEach(listing::unread);
    if (transaction.records().isEmpty()) {
      listing.out.append("no record could be read\n");
    }
    return listing.out.toString();
  }

  private void record(LogicalRecord record) {
    String idc =
        record.idc().isPresent()
            ? String.format(Locale.ROOT, " IDC %02d", record.idc().getAsInt())
            : "";
    out.append('\n');
    row(
        record.range(),
        String.format(
            Locale.ROOT,
            "Record %d: Type-%d%s, %s, %s",
            record.ordinal(),
            record.type(),
            idc,
            wording.recordType(record.type()),
            record.encoding().name().toLowerCase(Locale.ROOT)));
    record.fields().forEach(field -> field(record, field));
    record.unread().forEach(this::unread);
  }

  private void field(LogicalRecord record, Field field) {
    Optional<FieldRow> row =
        tables.layout(record.type()).field(field.number(), transaction.version());
    String mnemonic = row.map(FieldRow::mnemonic).orElse("");
    String lead = String.format(Locale.ROOT, "  %-7s %-4s ", field.number(), mnemonic);
    if (field.isData()) {
      row(field.range(), lead + data(record.dataOf(field)));
      return;
    }
    List<FieldRow> items =
        tables.layout(record.type()).items(field.number(), transaction.version());
    boolean personal = row.map(FieldRow::personal).orElse(record.type() != 1);
    if (field.subfields().size() == 1) {
      row(field.range(), lead + items(field.subfields().get(0), personal, items));
      return;
    }
    row(field.range(), lead + field.subfields().size() + " subfields");
    field.subfields().stream()
        .limit(MOST_SUBFIELDS)
        .forEach(s -> row(s.range(), "               " + items(s, personal, items)));
    if (field.subfields().size() > MOST_SUBFIELDS) {
      out.append(" ".repeat(35))
          .append("and ")
          .append(field.subfields().size() - MOST_SUBFIELDS)
          .append(" more\n");
    }
  }

  private String items(Subfield subfield, boolean personal, List<FieldRow> rows) {
    List<String> shown = new ArrayList<>();
    int masked = 0;
    for (int number = 1; number <= subfield.items().size(); number++) {
      String text = subfield.text(number);
      boolean mask = isMasked(text, number, personal, rows);
      masked += mask ? 1 : 0;
      shown.add(mask ? SafeText.MASKED : SafeText.of(text));
    }
    return masked > 1 && masked == shown.size()
        ? masked + " items " + SafeText.MASKED
        : String.join(" | ", shown);
  }

  private boolean isMasked(String text, int number, boolean personal, List<FieldRow> rows) {
    return !options.showPersonal()
        && !text.isEmpty()
        && (personal
            || rows.stream()
                .filter(row -> row.item().orElse(0) == number)
                .anyMatch(FieldRow::personal));
  }

  private static String data(ByteSource bytes) {
    StringBuilder hex = new StringBuilder();
    for (int i = 0; i < Math.min(FIRST_BYTES, bytes.length()); i++) {
      hex.append("%02X ".formatted(bytes.byteAt(i)));
    }
    return String.format(
        Locale.ROOT,
        "%,d bytes of data: %s%s",
        bytes.length(),
        hex.toString().strip(),
        bytes.length() > FIRST_BYTES ? " ..." : "");
  }

  private void unread(ByteRange range) {
    row(range, "  these bytes belong to no field or record");
  }

  private void row(ByteRange range, String text) {
    String lead = String.format(Locale.ROOT, "%8d %8d  ", range.offset(), range.length());
    TextLayout.indented(out, lead, text, Math.max(options.width(), 40));
  }
}
