package ridgeproof.examination.rules.transaction;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.rules.Rule;
import ridgeproof.examination.submission.TransactionKind;
import ridgeproof.finding.FindingLog;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;
import ridgeproof.spec.layout.Code;
import ridgeproof.spec.layout.FieldRow;
import ridgeproof.spec.layout.RecordLayout;
import ridgeproof.spec.layout.ValueRule;
import ridgeproof.transaction.record.Field;
import ridgeproof.transaction.record.Item;
import ridgeproof.transaction.record.LogicalRecord;
import ridgeproof.transaction.record.Subfield;

/** Codes are in the capitals in which they are published. */
final class CodeCaseRule implements Rule {

  private static final ValueRule TRANSACTION_TYPES = new ValueRule.InTable(TransactionKind.TABLE);

  @Override
  public Set<String> ids() {
    return Set.of("RP-FLD-035");
  }

  @Override
  public void check(ExaminationInput examinee, FindingLog log) {
    for (LogicalRecord record : examinee.transaction().records()) {
      for (Field field : record.fields()) {
        for (int i = 0; i < field.subfields().size(); i++) {
          check(examinee, record, field, i, log);
        }
      }
    }
  }

  private static void check(
      ExaminationInput examinee, LogicalRecord record, Field field, int index, FindingLog log) {
    Subfield subfield = field.subfields().get(index);
    for (int i = 1; i <= subfield.items().size(); i++) {
      Item item = subfield.items().get(i - 1);
      String capitals = item.text().toUpperCase(Locale.ROOT);
      if (!capitals.equals(item.text())
          && values(examinee, record, field, i)
              .filter(rule -> knows(rule, item.text(), capitals, examinee))
              .filter(rule -> !knows(rule, item.text(), item.text(), examinee))
              .isPresent()) {
        log.add(
            "RP-FLD-035",
            Location.of(record, field).item(index + 1, i, item),
            observed(examinee, record, field, i, item.text()),
            "the same code in capital letters");
      }
    }
  }

  /** Whether the text means a code that is published as it is written. */
  private static boolean knows(
      ValueRule rule, String text, String written, ExaminationInput examinee) {
    return rule.matches(
        text,
        (table, code) ->
            examinee
                .tables()
                .codes(table)
                .find(text)
                .map(Code::code)
                .filter(written::equals)
                .isPresent());
  }

  private static Optional<ValueRule> values(
      ExaminationInput examinee, LogicalRecord record, Field field, int item) {
    if (field.number().equals(TransactionKind.FIELD)) {
      return Optional.of(TRANSACTION_TYPES);
    }
    int version = examinee.transaction().version();
    RecordLayout layout = examinee.tables().layout(record.type());
    List<FieldRow> items = layout.items(field.number(), version);
    Optional<FieldRow> row =
        items.isEmpty()
            ? layout.field(field.number(), version)
            : items.stream().filter(one -> one.item().equals(OptionalInt.of(item))).findFirst();
    return row.flatMap(FieldRow::values);
  }

  private static Observed observed(
      ExaminationInput examinee, LogicalRecord record, Field field, int item, String text) {
    String quoted = "\"" + text + "\"";
    return examinee
            .tables()
            .layout(record.type())
            .isPublic(field.number(), item, examinee.transaction().version())
        ? Observed.of(quoted)
        : Observed.personal(quoted);
  }
}
