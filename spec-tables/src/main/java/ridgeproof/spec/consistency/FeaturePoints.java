package ridgeproof.spec.consistency;

import java.util.Optional;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.layout.ItemReference;
import ridgeproof.spec.table.Source;
import ridgeproof.spec.table.Table;

/**
 * A field whose subfields each place a feature.
 *
 * @param feature what it is: minutia, core, ...
 * @param packed whether one item holds X and Y in four digits each; else Y is the item after X
 * @param firstItem the item with X, or with both
 * @param inPixels whether coordinates count pixels; else hundredths of a millimetre
 * @param frameWidth where the record states the width that coordinates refer to, in their unit;
 *     empty where it is that of the image
 * @param frameHeight as the width
 */
public record FeaturePoints(
    FieldNumber field,
    String feature,
    boolean packed,
    int firstItem,
    boolean inPixels,
    Optional<ItemReference> frameWidth,
    Optional<ItemReference> frameHeight,
    Source source) {

  static FeaturePoints of(Table.Row row) {
    return new FeaturePoints(
        row.parse("field", FieldNumber::parse),
        row.required("feature"),
        row.parse("form", cell -> either(cell, "packed", "pair")),
        row.parse("first_item", Integer::parseInt),
        row.parse("unit", cell -> either(cell, "pixel", "0.01 mm")),
        row.optional("frame_width").map(cell -> row.parse("frame_width", ItemReference::parse)),
        row.optional("frame_height").map(cell -> row.parse("frame_height", ItemReference::parse)),
        row.source());
  }

  private static boolean either(String cell, String yes, String no) {
    if (!cell.equals(yes) && !cell.equals(no)) {
      throw new IllegalArgumentException("neither " + yes + " nor " + no);
    }
    return cell.equals(yes);
  }
}
