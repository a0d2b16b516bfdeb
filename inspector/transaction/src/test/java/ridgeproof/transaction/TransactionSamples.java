package ridgeproof.transaction;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import ridgeproof.finding.Finding;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.transaction.reader.ParseLimits;
import ridgeproof.transaction.reader.TransactionReader;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.record.CharacterEncoding;
import ridgeproof.transaction.writer.FieldDraft;
import ridgeproof.transaction.writer.RecordDraft;
import ridgeproof.transaction.writer.TransactionWriter;

/** Small transactions of the invented Tidewater Harbour Pilots' licensing office. */
public final class TransactionSamples {

  public static final SpecTables TABLES = SpecTables.open();

  private TransactionSamples() {}

  /** A Type-1, a Type-2 and a Type-14 record with ten bytes for an image. */
  static List<RecordDraft> drafts() {
    return List.of(header(), particulars(), fingerprint(1, 1));
  }

  public static byte[] bytes() {
    return write(drafts());
  }

  public static byte[] write(List<RecordDraft> records) {
    return new TransactionWriter(CharacterEncoding.ASCII).write(records);
  }

  public static RecordDraft header() {
    return RecordDraft.tagged(
        1,
        List.of(
            FieldDraft.text(new FieldNumber(1, 1), ""),
            FieldDraft.text(new FieldNumber(1, 2), "0500"),
            FieldDraft.text(new FieldNumber(1, 3), ""),
            FieldDraft.text(new FieldNumber(1, 4), "FAUF"),
            FieldDraft.text(new FieldNumber(1, 5), "20260302"),
            FieldDraft.text(new FieldNumber(1, 7), "THP000000"),
            FieldDraft.text(new FieldNumber(1, 8), "THP000001"),
            FieldDraft.text(new FieldNumber(1, 9), "PILOT-0001"),
            FieldDraft.text(new FieldNumber(1, 11), "00.00"),
            FieldDraft.text(new FieldNumber(1, 12), "00.00")));
  }

  public static RecordDraft particulars() {
    return RecordDraft.tagged(
        2,
        List.of(
            FieldDraft.text(new FieldNumber(2, 1), ""),
            FieldDraft.text(new FieldNumber(2, 2), "00"),
            FieldDraft.text(new FieldNumber(2, 18), "SPECIMEN,ADA")));
  }

  public static RecordDraft fingerprint(int idc, int position) {
    return RecordDraft.tagged(
        14,
        List.of(
            FieldDraft.text(new FieldNumber(14, 1), ""),
            FieldDraft.text(new FieldNumber(14, 2), "%02d".formatted(idc)),
            FieldDraft.text(new FieldNumber(14, 3), "1"),
            FieldDraft.text(new FieldNumber(14, 13), Integer.toString(position)),
            FieldDraft.data(
                new FieldNumber(14, 999), ByteSource.of(ascii("\u001C\u001Dimage\u001E\u001F.")))));
  }

  /** A Type-4 record of 3 x 2 pixels. */
  public static RecordDraft binaryFingerprint(int idc, int position) {
    List<FieldDraft> fields = new ArrayList<>();
    fields.add(FieldDraft.binary(new FieldNumber(4, 1), 4, 0));
    fields.add(FieldDraft.binary(new FieldNumber(4, 2), 1, idc));
    fields.add(FieldDraft.binary(new FieldNumber(4, 3), 1, 1));
    fields.add(FieldDraft.binary(new FieldNumber(4, 4), 1, position, 255, 255, 255, 255, 255));
    fields.add(FieldDraft.binary(new FieldNumber(4, 5), 1, 0));
    fields.add(FieldDraft.binary(new FieldNumber(4, 6), 2, 3));
    fields.add(FieldDraft.binary(new FieldNumber(4, 7), 2, 2));
    fields.add(FieldDraft.binary(new FieldNumber(4, 8), 1, 0));
    fields.add(
        FieldDraft.binary(new FieldNumber(4, 9), ByteSource.of(new byte[] {1, 2, 3, 4, 5, 6})));
    return RecordDraft.binary(4, fields);
  }

  public static Transaction read(byte[] bytes) {
    return new TransactionReader(TABLES, ParseLimits.standard()).read(ByteSource.of(bytes));
  }

  public static List<String> rules(Transaction transaction) {
    return transaction.findings().stream().map(Finding::ruleId).distinct().toList();
  }

  public static byte[] ascii(String text) {
    return text.getBytes(StandardCharsets.ISO_8859_1);
  }

  public static String text(byte[] bytes) {
    return new String(bytes, StandardCharsets.ISO_8859_1);
  }
}
