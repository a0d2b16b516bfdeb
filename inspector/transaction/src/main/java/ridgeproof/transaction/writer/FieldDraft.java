package ridgeproof.transaction.writer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.record.Field;
import ridgeproof.transaction.record.Item;
import ridgeproof.transaction.record.LogicalRecord;
import ridgeproof.transaction.record.Subfield;

/**
 * A field to be written.
 *
 * @param tag the number as it is to be written; empty in a binary record
 * @param subfields the items of each subfield; none where the value is data
 * @param data image or other bytes, or the bytes of a binary record's number
 */
public record FieldDraft(
    FieldNumber number, String tag, List<List<String>> subfields, Optional<ByteSource> data) {

  public FieldDraft {
    subfields = List.copyOf(subfields);
  }

  /** A text field with a single value. */
  public static FieldDraft text(FieldNumber number, String value) {
    return text(number, List.of(List.of(value)));
  }

  /** A text field with subfields of items. */
  public static FieldDraft text(FieldNumber number, List<List<String>> subfields) {
    return new FieldDraft(number, number.toString(), subfields, Optional.empty());
  }

  /** The image field of a tagged record. */
  public static FieldDraft data(FieldNumber number, ByteSource bytes) {
    return new FieldDraft(number, number.toString(), List.of(), Optional.of(bytes));
  }

  /** The image of a binary record, or a number of its header already as bytes. */
  public static FieldDraft binary(FieldNumber number, ByteSource bytes) {
    return new FieldDraft(number, "", List.of(), Optional.of(bytes));
  }

  /**
   * A number of a binary record's header.
   *
   * @param width bytes of each value
   */
  public static FieldDraft binary(FieldNumber number, int width, long... values) {
    byte[] bytes = new byte[width * values.length];
    for (int i = 0; i < bytes.length; i++) {
      int shift = 8 * (width - 1 - i % width);
      bytes[i] = (byte) (values[i / width] >>> shift);
    }
    return binary(number, ByteSource.of(bytes));
  }

  /** The field as it was read from a record. */
  static FieldDraft of(LogicalRecord record, Field field) {
    if (field.isData() || field.tag().isEmpty()) {
      return new FieldDraft(
          field.number(), field.tag(), List.of(), Optional.of(record.dataOf(field)));
    }
    List<List<String>> subfields = new ArrayList<>();
    for (Subfield subfield : field.subfields()) {
      subfields.add(subfield.items().stream().map(Item::text).toList());
    }
    return new FieldDraft(field.number(), field.tag(), subfields, Optional.empty());
  }

  String firstText() {
    return subfields.isEmpty() ? "" : subfields.get(0).get(0);
  }
}
