package ridgeproof.transaction.record;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.layout.RecordTypeRow.Encoding;

/**
 * A logical record of a transaction.
 *
 * @param ordinal place in the file, from 1
 * @param idc information designation character, 0 to 99, where it could be read
 * @param range every byte of the record
 * @param unread bytes of the record that belong to no field
 * @param bytes the file's bytes of this record
 * @param notation how the bytes say what the fields hold
 */
public record LogicalRecord(
    int ordinal,
    int type,
    Encoding encoding,
    OptionalInt idc,
    ByteRange range,
    List<Field> fields,
    List<ByteRange> unread,
    ByteSource bytes,
    Notation notation) {

  public LogicalRecord {
    fields = List.copyOf(fields);
    unread = List.copyOf(unread);
  }

  /** A record in the traditional encoding. */
  public LogicalRecord(
      int ordinal,
      int type,
      Encoding encoding,
      OptionalInt idc,
      ByteRange range,
      List<Field> fields,
      List<ByteRange> unread,
      ByteSource bytes) {
    this(ordinal, type, encoding, idc, range, fields, unread, bytes, Notation.TRADITIONAL);
  }

  /** The same record at another place among the records. */
  public LogicalRecord withOrdinal(int value) {
    return new LogicalRecord(value, type, encoding, idc, range, fields, unread, bytes, notation);
  }

  /** The same record with the IDC that its field says. */
  public LogicalRecord withIdc(OptionalInt value) {
    return new LogicalRecord(
        ordinal, type, encoding, value, range, fields, unread, bytes, notation);
  }

  /**
   * The first field of a number.
   *
   * @param field the number after the point
   */
  public Optional<Field> field(int field) {
    for (Field candidate : fields) {
      if (candidate.number().field() == field && candidate.number().recordType() == type) {
        return Optional.of(candidate);
      }
    }
    return Optional.empty();
  }

  public Optional<Field> field(FieldNumber number) {
    return number.recordType() == type ? field(number.field()) : Optional.empty();
  }

  /** The first item of a field, where it says something. */
  public Optional<String> text(int field) {
    return field(field).map(Field::text).filter(text -> !text.isEmpty());
  }

  /** The first item of a field as a whole number, 0 or more. */
  public OptionalInt number(int field) {
    return text(field).map(WholeNumber::parse).orElse(OptionalInt.empty());
  }

  /** The image or other binary data of the record, with its place in the file. */
  public Optional<ByteSource> data() {
    return fields.stream().filter(Field::isData).findFirst().map(this::dataOf);
  }

  /** The bytes of a field's value; of data in XML, those that its Base64 stands for. */
  public ByteSource dataOf(Field field) {
    ByteSource value = bytes.slice(field.value().offset() - bytes.origin(), field.value().length());
    return field.decodedLength().isPresent()
        ? ByteSource.ofBase64(value, field.decodedLength().getAsInt())
        : value;
  }
}
