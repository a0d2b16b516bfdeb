package ridgeproof.examination.rules.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.SampleCard;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.facts.ExaminationOptions;
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

/** What a row may ask of an item, also where no row of today's tables asks it. */
class ItemPresenceTest {

  private static final FieldNumber FIELD = new FieldNumber(14, 46);
  private static final Source SOURCE = new Source("DESIGN", "", Source.Knowledge.COMMON_PRACTICE);

  private static FieldRow row(OptionalInt item, String condition) {
    return new FieldRow(
        FIELD,
        FIELD,
        item,
        "",
        "Specimen",
        Presence.parse(condition),
        CharacterType.ANY,
        OptionalInt.empty(),
        OptionalInt.empty(),
        1,
        OptionalInt.of(1),
        Optional.empty(),
        OptionalInt.empty(),
        false,
        VersionRange.ALL,
        SOURCE,
        Matched.NOTHING,
        Set.of());
  }

  /** The rules told of a field with these items, where the second is under that condition. */
  private static List<String> told(String condition, String... items) {
    byte[] bytes =
        SampleCard.rolledTagged()
            .with(3, record -> record.with(FIELD.field(), List.of(List.of(items))))
            .bytes();
    Transaction transaction =
        new TransactionReader(SampleCard.TABLES, ParseLimits.standard()).read(ByteSource.of(bytes));
    LogicalRecord record = transaction.records().get(2);
    Field field = record.field(FIELD).orElseThrow();
    FindingLog log = new FindingLog(SampleCard.TABLES, 100);
    new FieldCheck(
            examinee(transaction),
            record,
            field,
            row(OptionalInt.empty(), "optional"),
            List.of(row(OptionalInt.of(1), "mandatory"), row(OptionalInt.of(2), condition)),
            new RecordValues(transaction, record),
            log)
        .run();
    return log.findings().stream().map(Finding::ruleId).toList();
  }

  private static ExaminationInput examinee(Transaction transaction) {
    return new ExaminationInput(
        transaction,
        SampleCard.TABLES,
        Depth.STRUCTURE,
        List.of(),
        Optional.empty(),
        false,
        ExaminationOptions.standard(),
        Optional.empty());
  }

  @Test
  void aForbiddenItemIsToldOnlyWhereItsConditionHolds() {
    assertEquals(List.of("RP-FLD-009"), told("forbidden if item 1 = A", "A", "1"));
    assertEquals(List.of(), told("forbidden if item 1 = A", "D", "1"));
    assertEquals(List.of(), told("forbidden if item 1 = A", "A"));
  }

  @Test
  void aDeprecatedItemIsToldWhereItIsGiven() {
    assertEquals(List.of("RP-FLD-010"), told("deprecated if version >= 0500", "A", "1"));
    assertEquals(List.of(), told("deprecated if version >= 0500", "A"));
    assertEquals(List.of(), told("deprecated if version < 0500", "A", "1"));
  }

  @Test
  void aMandatoryItemIsToldWhereItSaysNothing() {
    assertEquals(List.of("RP-FLD-002"), told("mandatory if item 1 = D", "D", ""));
    assertEquals(List.of(), told("mandatory if item 1 = D", "A", ""));
  }
}
