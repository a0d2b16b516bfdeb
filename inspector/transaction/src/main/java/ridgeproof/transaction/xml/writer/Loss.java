package ridgeproof.transaction.xml.writer;

import java.util.Optional;
import ridgeproof.spec.layout.FieldNumber;

/**
 * Something of a transaction that the other encoding does not carry.
 *
 * @param record ordinal of the record, from 1; 0 for the file
 * @param field where it is of a field
 * @param reason a few words without a value of the file
 */
public record Loss(int record, int recordType, Optional<FieldNumber> field, String reason) {

  /** Something that belongs to no record. */
  public static Loss ofFile(String reason) {
    return new Loss(0, 0, Optional.empty(), reason);
  }

  @Override
  public String toString() {
    if (record == 0) {
      return reason;
    }
    String place = "record " + record + " (Type-" + recordType + ")";
    return field.map(number -> place + ", field " + number).orElse(place) + ": " + reason;
  }
}
