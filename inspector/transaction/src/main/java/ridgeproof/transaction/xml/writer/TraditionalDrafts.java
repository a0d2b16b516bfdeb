package ridgeproof.transaction.xml.writer;

import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import ridgeproof.finding.Finding;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.FieldRow;
import ridgeproof.spec.layout.RecordTypeRow.Encoding;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.record.CharacterEncoding;
import ridgeproof.transaction.record.Field;
import ridgeproof.transaction.record.Item;
import ridgeproof.transaction.record.LogicalRecord;
import ridgeproof.transaction.record.Subfield;
import ridgeproof.transaction.record.WholeNumber;
import ridgeproof.transaction.writer.FieldDraft;
import ridgeproof.transaction.writer.RecordDraft;
import ridgeproof.transaction.writer.TransactionWriter;

/** A transaction that was read from XML, in the traditional encoding. */
public final class TraditionalDrafts {

  private static final int LENGTH_FIELD = 1;

  private final SpecTables tables;
  private final List<Loss> losses = new ArrayList<>();

  public TraditionalDrafts(SpecTables tables) {
    this.tables = tables;
  }

  /** What was not carried so far. */
  public List<Loss> losses() {
    return List.copyOf(losses);
  }

  /** The bytes of the transaction, LEN and CNT computed. */
  public byte[] write(Transaction transaction) {
    List<RecordDraft> records = new ArrayList<>();
    boolean plain = true;
    for (LogicalRecord record : transaction.records()) {
      records.add(
          record.encoding() == Encoding.BINARY
              ? RecordDraft.binary(record.type(), binary(record))
              : RecordDraft.tagged(record.type(), tagged(record)));
      plain &= isAscii(record);
    }
    for (Finding finding : transaction.findings()) {
      if (finding.ruleId().equals("RP-XML-005") || finding.ruleId().equals("RP-XML-016")) {
        losses.add(
            new Loss(
                finding.location().record().orElse(0),
                finding.location().recordType().orElse(0),
                Optional.empty(),
                "elements that no field is known for"));
      }
    }
    return new TransactionWriter(plain ? CharacterEncoding.ASCII : CharacterEncoding.UTF_8)
        .write(records);
  }

  private List<FieldDraft> tagged(LogicalRecord record) {
    List<FieldDraft> drafts = new ArrayList<>();
    for (Field field : record.fields()) {
      if (field.isData()) {
        drafts.add(FieldDraft.data(field.number(), record.dataOf(field)));
      } else if (field.number().field() != LENGTH_FIELD) {
        List<List<String>> subfields = new ArrayList<>();
        for (Subfield subfield : field.subfields()) {
          subfields.add(subfield.items().stream().map(item -> clean(record, field, item)).toList());
        }
        drafts.add(FieldDraft.text(field.number(), subfields));
      }
    }
    return drafts;
  }

  /** Separators of the traditional encoding cannot be part of a value. */
  private String clean(LogicalRecord record, Field field, Item item) {
    StringBuilder clean = new StringBuilder();
    item.text().chars().filter(c -> c < 0x1C || c > 0x1F).forEach(c -> clean.append((char) c));
    if (clean.length() < item.text().length()) {
      lose(record, field, "characters that the traditional encoding cannot hold");
    }
    return clean.toString();
  }

  private List<FieldDraft> binary(LogicalRecord record) {
    List<FieldDraft> drafts = new ArrayList<>();
    for (FieldRow row : tables.layout(record.type()).rows()) {
      if (row.number().field() == LENGTH_FIELD
          || row.bytes().isEmpty()
          || drafts.stream().anyMatch(draft -> draft.number().equals(row.number()))) {
        continue;
      }
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      Optional<Field> field = record.field(row.number());
      for (int i = 0; i < row.maxOccurs().orElse(1); i++) {
        long number = number(record, row, field, i);
        for (int shift = Byte.SIZE * (row.bytes().getAsInt() - 1); shift >= 0; shift -= Byte.SIZE) {
          bytes.write((int) (number >>> shift));
        }
      }
      drafts.add(FieldDraft.binary(row.number(), ByteSource.of(bytes.toByteArray())));
    }
    record.fields().stream()
        .filter(Field::isData)
        .forEach(field -> drafts.add(FieldDraft.binary(field.number(), record.dataOf(field))));
    return drafts;
  }

  private long number(LogicalRecord record, FieldRow row, Optional<Field> field, int subfield) {
    if (field.isEmpty() || subfield >= field.get().subfields().size()) {
      return 0;
    }
    OptionalInt number = WholeNumber.parse(field.get().subfields().get(subfield).text(1));
    long most = (1L << Byte.SIZE * row.bytes().getAsInt()) - 1;
    if (number.isEmpty() || number.getAsInt() > most) {
      lose(record, field.get(), "a value that is no number of its size");
      return 0;
    }
    return number.getAsInt();
  }

  private static boolean isAscii(LogicalRecord record) {
    return record.fields().stream()
        .flatMap(field -> field.subfields().stream())
        .flatMap(subfield -> subfield.items().stream())
        .allMatch(item -> item.text().chars().allMatch(c -> c < 0x80));
  }

  private void lose(LogicalRecord record, Field field, String reason) {
    losses.add(new Loss(record.ordinal(), record.type(), Optional.of(field.number()), reason));
  }
}
