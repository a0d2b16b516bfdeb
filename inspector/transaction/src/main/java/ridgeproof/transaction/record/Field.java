package ridgeproof.transaction.record;

import java.util.List;
import ridgeproof.spec.layout.FieldNumber;

/**
 * A field of a record. Fields of binary records are shown the same way, with the number that the
 * standard gives them and their value as decimal text.
 *
 * @param tag the number as the file writes it, {@code 14.013}; empty in a binary record
 * @param range tag, value and the separator that ends the field
 * @param value the bytes of the value
 * @param subfields none where the value is image or other binary data
 */
public record Field(
    FieldNumber number, String tag, ByteRange range, ByteRange value, List<Subfield> subfields) {

  public Field {
    subfields = List.copyOf(subfields);
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
