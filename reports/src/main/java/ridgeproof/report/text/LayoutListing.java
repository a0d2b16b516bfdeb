package ridgeproof.report.text;

import java.util.Locale;
import ridgeproof.report.FieldValues;
import ridgeproof.report.FileFacts;
import ridgeproof.report.RenderOptions;
import ridgeproof.report.ReportPhrases;
import ridgeproof.report.TextLayout;
import ridgeproof.report.TextSanitizer;
import ridgeproof.report.words.Counted;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.FieldRow;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.record.ByteRange;
import ridgeproof.transaction.record.Field;
import ridgeproof.transaction.record.LogicalRecord;

/** The file as it is: every byte in a record and a field, with its offset. */
public final class LayoutListing {

  private static final int MAX_SUBFIELDS = 20;

  private final Transaction transaction;
  private final RenderOptions options;
  private final ReportPhrases wording;
  private final FieldValues values;
  private final StringBuilder out = new StringBuilder();

  private LayoutListing(Transaction transaction, SpecTables tables, RenderOptions options) {
    this.transaction = transaction;
    this.values = new FieldValues(tables, transaction.version(), options.showPersonal());
    this.options = options;
    this.wording = new ReportPhrases(tables);
  }

  public static String render(
      FileFacts file, Transaction transaction, SpecTables tables, RenderOptions options) {
    LayoutListing listing = new LayoutListing(transaction, tables, options);
    listing.out.append(TextSanitizer.of(file.name())).append("  ");
    listing.out.append(Counted.of(file.bytes(), "byte")).append('\n');
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
    String mnemonic = values.row(field.number()).map(FieldRow::mnemonic).orElse("");
    String lead = String.format(Locale.ROOT, "  %-7s %-4s ", field.number(), mnemonic);
    if (field.isData()) {
      row(field.range(), lead + values.data(record, field));
      return;
    }
    if (field.subfields().size() == 1) {
      row(field.range(), lead + values.items(field.number(), field.subfields().get(0)));
      return;
    }
    row(field.range(), lead + field.subfields().size() + " subfields");
    field.subfields().stream()
        .limit(MAX_SUBFIELDS)
        .forEach(s -> row(s.range(), "               " + values.items(field.number(), s)));
    if (field.subfields().size() > MAX_SUBFIELDS) {
      out.append(" ".repeat(35))
          .append("and ")
          .append(field.subfields().size() - MAX_SUBFIELDS)
          .append(" more\n");
    }
  }

  private void unread(ByteRange range) {
    row(range, "  these bytes belong to no field or record");
  }

  private void row(ByteRange range, String text) {
    String lead = String.format(Locale.ROOT, "%8d %8d  ", range.offset(), range.length());
    TextLayout.indented(out, lead, text, Math.max(options.width(), 40));
  }
}
