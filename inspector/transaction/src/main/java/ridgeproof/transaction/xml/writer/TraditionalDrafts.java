package ridgeproof.transaction.xml.writer;

import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.FieldNumber;
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
  private static final int CHARACTER_SET_FIELD = 15;

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
      plain &= isBelow(record, 0x80);
    }
    losses.addAll(NotCarried.unread(transaction));
    losses.addAll(NotCarried.contents(transaction));
    CharacterEncoding encoding = encoding(records, transaction.records(), plain);
    return new TransactionWriter(encoding).write(records);
  }

  /** The character set that the header names, or else UTF-8, which the header then names. */
  private CharacterEncoding encoding(
      List<RecordDraft> records, List<LogicalRecord> read, boolean ascii) {
    if (ascii) {
      return CharacterEncoding.ASCII;
    }
    LogicalRecord header = read.get(0);
    OptionalInt stated =
        header.text(CHARACTER_SET_FIELD).map(WholeNumber::parse).orElse(OptionalInt.empty());
    if (stated.isPresent()
        && stated.getAsInt() == Integer.parseInt(CharacterEncoding.LATIN_1.code())
        && read.stream().allMatch(record -> isBelow(record, 0x100))) {
      return CharacterEncoding.LATIN_1;
    }
    String utf8 = CharacterEncoding.UTF_8.code();
    if (stated.isEmpty() || stated.getAsInt() != Integer.parseInt(utf8)) {
      records.set(0, records.get(0).with(CHARACTER_SET_FIELD, List.of(List.of(utf8, "UTF-8"))));
      losses.add(
          new Loss(
              header.ordinal(),
              header.type(),
              Optional.of(new FieldNumber(header.type(), CHARACTER_SET_FIELD)),
              "it names UTF-8 now, which the values need"));
    }
    return CharacterEncoding.UTF_8;
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
    if (field.isEmpty()) {
      if (subfield == 0) {
        losses.add(
            new Loss(
                record.ordinal(),
                record.type(),
                Optional.of(row.number()),
                "it is missing and becomes 0, since such a record has it in any case"));
      }
      return 0;
    }
    if (subfield >= field.get().subfields().size()) {
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

  private static boolean isBelow(LogicalRecord record, int limit) {
    return record.fields().stream()
        .flatMap(field -> field.subfields().stream())
        .flatMap(subfield -> subfield.items().stream())
        .allMatch(item -> item.text().chars().allMatch(c -> c < limit));
  }

  private void lose(LogicalRecord record, Field field, String reason) {
    losses.add(new Loss(record.ordinal(), record.type(), Optional.of(field.number()), reason));
  }
}
