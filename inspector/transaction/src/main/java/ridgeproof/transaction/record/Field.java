package ridgeproof.transaction.record;

import java.util.List;
import java.util.OptionalInt;
import ridgeproof.spec.layout.FieldNumber;

/**
 * A field of a record. Fields of binary records are shown the same way, with the number that the
 * standard gives them and their value as decimal text.
 *
 * @param tag the number as the file writes it, {@code 14.013}; empty in a binary record
 * @param range tag, value and the separator that ends the field
 * @param value the bytes of the value
 * @param subfields none where the value is image or other binary data
 * @param decodedLength how many bytes the value stands for where the file holds it as Base64
 */
public record Field(
    FieldNumber number,
    String tag,
    ByteRange range,
    ByteRange value,
    List<Subfield> subfields,
    OptionalInt decodedLength) {

  public Field {
    subfields = List.copyOf(subfields);
  }

  /** A field whose value stands in the file as it is. */
  public Field(
      FieldNumber number, String tag, ByteRange range, ByteRange value, List<Subfield> subfields) {
    this(number, tag, range, value, subfields, OptionalInt.empty());
  }

  /** Data that the file holds as Base64 of so many bytes. */
  public static Field inBase64(
      FieldNumber number, String tag, ByteRange range, ByteRange value, int decodedLength) {
    return new Field(number, tag, range, value, List.of(), OptionalInt.of(decodedLength));
  }

  /** Whether the value is image or other binary data. */
  public boolean isData() {
    return subfields.isEmpty();
  }

  /** The first item of the first subfield; empty for data. */
  public String text() {
    return isData() ? "" : subfields.get(0).text(1);
  }
}
