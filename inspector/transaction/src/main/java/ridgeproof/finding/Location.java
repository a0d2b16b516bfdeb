package ridgeproof.finding;

import java.util.Optional;
import java.util.OptionalInt;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.transaction.record.ByteRange;
import ridgeproof.transaction.record.Field;
import ridgeproof.transaction.record.Item;
import ridgeproof.transaction.record.LogicalRecord;

/**
 * Where in the file a finding stands; each part only where it is known.
 *
 * @param record ordinal of the record, from 1
 * @param subfield counted from 1
 * @param item counted from 1
 * @param bytes the bytes it is about
 * @param position friction ridge position code
 */
public record Location(
    OptionalInt record,
    OptionalInt recordType,
    OptionalInt idc,
    Optional<FieldNumber> field,
    OptionalInt subfield,
    OptionalInt item,
    Optional<ByteRange> bytes,
    OptionalInt position) {

  private static final Location FILE =
      new Location(
          OptionalInt.empty(),
          OptionalInt.empty(),
          OptionalInt.empty(),
          Optional.empty(),
          OptionalInt.empty(),
          OptionalInt.empty(),
          Optional.empty(),
          OptionalInt.empty());

  /** The file as a whole. */
  public static Location file() {
    return FILE;
  }

  /** A record that is still being read. */
  public static Location inRecord(int ordinal, int recordType) {
    return new Location(
        OptionalInt.of(ordinal),
        OptionalInt.of(recordType),
        OptionalInt.empty(),
        Optional.empty(),
        OptionalInt.empty(),
        OptionalInt.empty(),
        Optional.empty(),
        OptionalInt.empty());
  }

  public static Location of(LogicalRecord record) {
    return inRecord(record.ordinal(), record.type()).withIdc(record.idc()).at(record.range());
  }

  public static Location of(LogicalRecord record, Field field) {
    return of(record).in(field.number()).at(field.range());
  }

  /** The same place with other bytes. */
  public Location at(ByteRange range) {
    return new Location(
        record, recordType, idc, field, subfield, item, Optional.of(range), position);
  }

  /** The same place in a copy with other offsets. */
  public Location withoutBytes(boolean withRecord) {
    return new Location(
        withRecord ? record : OptionalInt.empty(),
        recordType,
        idc,
        field,
        subfield,
        item,
        Optional.empty(),
        position);
  }

  public Location in(FieldNumber number) {
    return new Location(
        record, recordType, idc, Optional.of(number), subfield, item, bytes, position);
  }

  public Location withIdc(OptionalInt value) {
    return new Location(record, recordType, value, field, subfield, item, bytes, position);
  }

  public Location withPosition(OptionalInt value) {
    return new Location(record, recordType, idc, field, subfield, item, bytes, value);
  }

  /**
   * A repetition of the field.
   *
   * @param number counted from 1
   */
  public Location subfield(int number, ByteRange range) {
    return new Location(
        record,
        recordType,
        idc,
        field,
        OptionalInt.of(number),
        OptionalInt.empty(),
        Optional.of(range),
        position);
  }

  /**
   * An item of a repetition of the field.
   *
   * @param subfieldNumber counted from 1
   * @param itemNumber counted from 1
   */
  public Location item(int subfieldNumber, int itemNumber, Item value) {
    return new Location(
        record,
        recordType,
        idc,
        field,
        OptionalInt.of(subfieldNumber),
        OptionalInt.of(itemNumber),
        Optional.of(value.range()),
        position);
  }
}
