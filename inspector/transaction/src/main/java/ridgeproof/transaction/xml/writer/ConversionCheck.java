package ridgeproof.transaction.xml.writer;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.record.Field;
import ridgeproof.transaction.record.Item;
import ridgeproof.transaction.record.LogicalRecord;

/** Compares a transaction with what was written of it, field by field. */
public final class ConversionCheck {

  private static final int LENGTH_FIELD = 1;

  private final List<Loss> known;
  private final List<Loss> found = new ArrayList<>();

  private ConversionCheck(List<Loss> known) {
    this.known = known;
  }

  /**
   * Fields that are not the same when they are read again, LEN aside.
   *
   * @param known what is named already, and not named once more
   */
  public static List<Loss> of(Transaction original, Transaction written, List<Loss> known) {
    ConversionCheck check = new ConversionCheck(known);
    List<LogicalRecord> others = written.records();
    int next = 0;
    for (LogicalRecord record : original.records()) {
      if (next < others.size() && others.get(next).type() == record.type()) {
        check.compare(record, others.get(next++));
      } else if (known.stream().noneMatch(loss -> loss.record() == record.ordinal())) {
        check.found.add(loss(record, Optional.empty(), "the record is not found again"));
      }
    }
    return check.found;
  }

  private void compare(LogicalRecord record, LogicalRecord other) {
    Set<FieldNumber> numbers = new LinkedHashSet<>();
    record.fields().forEach(field -> numbers.add(field.number()));
    other.fields().forEach(field -> numbers.add(field.number()));
    for (FieldNumber number : numbers) {
      Optional<FieldNumber> named = Optional.of(number);
      boolean isKnown =
          known.stream()
              .anyMatch(loss -> loss.record() == record.ordinal() && loss.field().equals(named));
      if (number.field() != LENGTH_FIELD && !isKnown && !same(record, other, number)) {
        found.add(
            loss(
                record,
                named,
                other.field(number).isEmpty()
                    ? "it is not found again"
                    : record.field(number).isEmpty()
                        ? "it is added, since another field is written to the same element"
                        : "it is not the same when it is read again"));
      }
    }
  }

  private static boolean same(LogicalRecord record, LogicalRecord other, FieldNumber number) {
    List<Field> before = all(record, number);
    List<Field> after = all(other, number);
    if (before.size() != after.size()) {
      return false;
    }
    for (int i = 0; i < before.size(); i++) {
      Field one = before.get(i);
      Field two = after.get(i);
      boolean same =
          one.isData() && two.isData()
              ? Arrays.equals(record.dataOf(one).toArray(), other.dataOf(two).toArray())
              : one.isData() == two.isData() && texts(one).equals(texts(two));
      if (!same) {
        return false;
      }
    }
    return true;
  }

  private static List<Field> all(LogicalRecord record, FieldNumber number) {
    return record.fields().stream().filter(field -> field.number().equals(number)).toList();
  }

  private static List<List<String>> texts(Field field) {
    return field.subfields().stream()
        .map(subfield -> subfield.items().stream().map(Item::text).toList())
        .toList();
  }

  private static Loss loss(LogicalRecord record, Optional<FieldNumber> field, String reason) {
    return new Loss(record.ordinal(), record.type(), field, reason);
  }
}
