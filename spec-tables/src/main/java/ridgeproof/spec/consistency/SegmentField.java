package ridgeproof.spec.consistency;

import java.util.OptionalInt;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.table.Source;

/**
 * A field whose subfields each mark a part of the image, in pixels from its upper left corner.
 *
 * @param positionItem the item with the friction ridge position, where there is one
 * @param firstItem of a box, the left edge, which right edge, top and bottom follow; of a polygon,
 *     the number of corners, which X and Y of each corner follow
 */
public record SegmentField(
    FieldNumber field, Shape shape, OptionalInt positionItem, int firstItem, Source source) {

  /** What marks the part. */
  public enum Shape {
    BOX,
    POLYGON
  }
}
