package ridgeproof.spec.consistency;

import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.table.Table;

/**
 * A field whose subfields each declare a finger missing.
 *
 * @param fingerItem the item with the finger, from 1
 * @param reasonItem the item with the reason, from 1
 */
public record MissingFingerField(FieldNumber field, int fingerItem, int reasonItem) {

  public static MissingFingerField of(Table.Row row) {
    return new MissingFingerField(
        row.parse("field", FieldNumber::parse),
        row.parse("finger_item", Integer::parseInt),
        row.parse("reason_item", Integer::parseInt));
  }
}
