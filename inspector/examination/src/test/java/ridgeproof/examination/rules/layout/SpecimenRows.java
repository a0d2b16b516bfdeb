package ridgeproof.examination.rules.layout;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import ridgeproof.examination.SampleCard;
import ridgeproof.examination.cause.Established;
import ridgeproof.finding.Finding;
import ridgeproof.finding.FindingLog;
import ridgeproof.spec.layout.CharacterType;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.layout.FieldRow;
import ridgeproof.spec.layout.Presence;
import ridgeproof.spec.rule.Matched;
import ridgeproof.spec.table.Source;
import ridgeproof.spec.table.VersionRange;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.reader.ParseLimits;
import ridgeproof.transaction.reader.TransactionReader;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.record.Field;
import ridgeproof.transaction.record.LogicalRecord;

/** Rows that no table has today, and a field of a Type-14 record checked against them. */
final class SpecimenRows {

  static final FieldNumber FIELD = new FieldNumber(14, 46);

  private static final Source SOURCE = new Source("DESIGN", "", Source.Knowledge.COMMON_PRACTICE);
  private static final OptionalInt OPEN = OptionalInt.empty();

  private SpecimenRows() {}

  /** An item that may be of any characters and any length. */
  static FieldRow item(int number, String condition) {
    return row(
        OptionalInt.of(number), condition, CharacterType.ANY, OPEN, OPEN, OptionalInt.of(1), false);
  }

  /** An item of a group that may come so often. */
  static FieldRow repeated(int number, int rounds) {
    return row(
        OptionalInt.of(number),
        "mandatory",
        CharacterType.ANY,
        OPEN,
        OPEN,
        OptionalInt.of(rounds),
        false);
  }

  /** A field without items. */
  static FieldRow field(
      CharacterType characters, OptionalInt least, OptionalInt most, boolean isPublic) {
    return row(OPEN, "optional", characters, least, most, OptionalInt.of(1), isPublic);
  }

  private static FieldRow row(
      OptionalInt item,
      String condition,
      CharacterType characters,
      OptionalInt least,
      OptionalInt most,
      OptionalInt maxOccurs,
      boolean isPublic) {
    return new FieldRow(
        FIELD,
        FIELD,
        item,
        "",
        "Specimen",
        Presence.parse(condition),
        characters,
        least,
        most,
        1,
        maxOccurs,
        Optional.empty(),
        OptionalInt.empty(),
        isPublic,
        VersionRange.ALL,
        SOURCE,
        Matched.NOTHING,
        Set.of());
  }

  /** What is found of a field with one subfield of these items. */
  static List<Finding> found(FieldRow row, List<FieldRow> items, String... texts) {
    byte[] bytes =
        SampleCard.rolledTagged()
            .with(3, record -> record.with(FIELD.field(), List.of(List.of(texts))))
            .bytes();
    Transaction transaction =
        new TransactionReader(SampleCard.TABLES, ParseLimits.standard()).read(ByteSource.of(bytes));
    LogicalRecord record = transaction.records().get(2);
    Field field = record.field(FIELD).orElseThrow();
    FindingLog log = new FindingLog(SampleCard.TABLES, 100);
    RecordValues values = new RecordValues(transaction, record);
    new FieldCheck(Established.examinee(transaction), record, field, row, items, values, log).run();
    return log.findings();
  }
}
