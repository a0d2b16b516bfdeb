package ridgeproof.examination.rules.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.layout.Reference;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.record.Field;
import ridgeproof.transaction.record.LogicalRecord;
import ridgeproof.transaction.record.Subfield;

/** What the references of a condition stand for in one record, or in one subfield of it. */
public final class RecordValues implements Function<Reference, List<String>> {

  private static final List<String> DATA = List.of("data");

  private final Transaction transaction;
  private final LogicalRecord record;
  private final Optional<Subfield> subfield;

  public RecordValues(Transaction transaction, LogicalRecord record) {
    this(transaction, record, Optional.empty());
  }

  private RecordValues(Transaction transaction, LogicalRecord record, Optional<Subfield> subfield) {
    this.transaction = transaction;
    this.record = record;
    this.subfield = subfield;
  }

  /** The same record, looked at from one of its subfields. */
  RecordValues within(Subfield inner) {
    return new RecordValues(transaction, record, Optional.of(inner));
  }

  @Override
  public List<String> apply(Reference reference) {
    if (reference instanceof Reference.OfVersion) {
      return List.of(Integer.toString(transaction.version()));
    }
    if (reference instanceof Reference.OfSameSubfield same) {
      return subfield.map(s -> s.text(same.item())).filter(text -> !text.isEmpty()).stream()
          .toList();
    }
    if (reference instanceof Reference.OfItem item) {
      return texts(item.number(), item.item());
    }
    return texts(((Reference.OfField) reference).number(), 1);
  }

  private List<String> texts(FieldNumber number, int item) {
    Optional<Field> field = holder(number).flatMap(holder -> holder.field(number));
    if (field.isEmpty()) {
      return List.of();
    }
    if (field.get().isData()) {
      return field.get().value().length() > 0 ? DATA : List.of();
    }
    List<String> texts = new ArrayList<>();
    for (Subfield repetition : field.get().subfields()) {
      String text = repetition.text(item);
      if (!text.isEmpty()) {
        texts.add(text);
      }
    }
    return texts;
  }

  private Optional<LogicalRecord> holder(FieldNumber number) {
    return number.recordType() == record.type()
        ? Optional.of(record)
        : transaction.recordsOfType(number.recordType()).stream().findFirst();
  }
}
