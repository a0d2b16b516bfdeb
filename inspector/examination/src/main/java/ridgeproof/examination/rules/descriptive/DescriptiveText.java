package ridgeproof.examination.rules.descriptive;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.descriptive.ParticularRow;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.layout.FieldRow;
import ridgeproof.spec.layout.RecordLayout;
import ridgeproof.spec.layout.Reference;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.record.Field;
import ridgeproof.transaction.record.LogicalRecord;
import ridgeproof.transaction.record.Subfield;

/** The Type-2 records of a transaction whose domain we know the particulars of. */
public final class DescriptiveText {

  public static final int TYPE = 2;

  private static final int DOMAIN_FIELD = 13;
  private static final String DOMAIN = "NORAM";

  private final Transaction transaction;
  private final SpecTables tables;

  /**
   * One entry.
   *
   * @param conforms whether it keeps to the layout; else that has been reported already
   */
  record Entry(String text, Location location, boolean personal, boolean conforms) {

    Observed observed() {
      return observed("\"" + text + "\"");
    }

    Observed observed(String words) {
      return personal ? Observed.personal(words) : Observed.of(words);
    }
  }

  private DescriptiveText(Transaction transaction, SpecTables tables) {
    this.transaction = transaction;
    this.tables = tables;
  }

  /** None where field 1.013 names a domain whose particulars we do not know. */
  static Optional<DescriptiveText> of(ExaminationInput examinee) {
    String domain =
        examinee.transaction().header().flatMap(header -> header.text(DOMAIN_FIELD)).orElse(DOMAIN);
    return domain.equalsIgnoreCase(DOMAIN)
        ? Optional.of(new DescriptiveText(examinee.transaction(), examinee.tables()))
        : Optional.empty();
  }

  /** Whether the type of transaction needs fields and the file has none of those it lists. */
  public static boolean areAbsent(Transaction transaction, SpecTables tables) {
    List<ParticularRow> rows =
        transaction.typeOfTransaction().stream()
            .flatMap(type -> tables.particulars().ofTransaction(type).stream())
            .toList();
    DescriptiveText particulars = new DescriptiveText(transaction, tables);
    return rows.stream()
            .anyMatch(row -> RequiredDescriptiveFieldsRule.isAlwaysNeeded(row.presence()))
        && rows.stream().map(ParticularRow::field).noneMatch(particulars::has);
  }

  List<LogicalRecord> records() {
    return transaction.recordsOfType(TYPE);
  }

  boolean has(FieldNumber number) {
    return records().stream()
        .flatMap(record -> record.field(number).stream())
        .anyMatch(DescriptiveText::saysSomething);
  }

  /** The code of the table for the type of transaction: criminal, applicant, ... or nothing. */
  String kindOfTransaction() {
    return transaction
        .typeOfTransaction()
        .flatMap(code -> tables.codes("transaction-types").find(code))
        .map(code -> code.property("kind"))
        .orElse("");
  }

  /** Every entry of a field that says something and keeps to its layout. */
  List<Entry> conforming(String field) {
    return conforming(new Reference.OfField(FieldNumber.parse(field)));
  }

  List<Entry> conforming(Reference reference) {
    return entries(reference).stream().filter(Entry::conforms).toList();
  }

  private List<Entry> entries(Reference reference) {
    if (reference instanceof Reference.OfItem item) {
      return entries(item.number(), item.item());
    }
    return reference instanceof Reference.OfField field ? entries(field.number(), 1) : List.of();
  }

  private List<Entry> entries(FieldNumber number, int item) {
    List<Entry> entries = new ArrayList<>();
    for (LogicalRecord record : transaction.recordsOfType(number.recordType())) {
      Optional<Field> field = record.field(number);
      if (field.isPresent()) {
        add(record, field.get(), item, entries);
      }
    }
    return entries;
  }

  private void add(LogicalRecord record, Field field, int item, List<Entry> entries) {
    RecordLayout layout = tables.layout(record.type());
    Optional<FieldRow> whole = layout.field(field.number(), transaction.version());
    Optional<FieldRow> row =
        layout.items(field.number(), transaction.version()).stream()
            .filter(candidate -> candidate.item().getAsInt() == item)
            .findFirst()
            .or(() -> whole);
    boolean personal = !layout.isPublic(field.number(), item, transaction.version());
    for (int i = 1; i <= field.subfields().size(); i++) {
      Subfield subfield = field.subfields().get(i - 1);
      String text = subfield.text(item);
      if (!text.isEmpty()) {
        entries.add(
            new Entry(
                text,
                Location.of(record, field).item(i, item, subfield.items().get(item - 1)),
                personal,
                row.filter(rule -> !conforms(rule, text)).isEmpty()));
      }
    }
  }

  private boolean conforms(FieldRow row, String text) {
    int length = text.codePointCount(0, text.length());
    return row.characters().allows(text)
        && length >= row.minLength().orElse(0)
        && length <= row.maxLength().orElse(Integer.MAX_VALUE)
        && row.values().filter(values -> !values.matches(text, this::knows)).isEmpty();
  }

  private boolean knows(String table, String code) {
    return tables.codes(table).find(code, transaction.version()).isPresent();
  }

  private static boolean saysSomething(Field field) {
    return field.subfields().stream()
        .flatMap(subfield -> subfield.items().stream())
        .anyMatch(item -> !item.text().isEmpty());
  }
}
