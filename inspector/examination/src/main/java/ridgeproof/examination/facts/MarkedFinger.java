package ridgeproof.examination.facts;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ridgeproof.imagery.GrayImage;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.consistency.SegmentField;

/**
 * A finger that a record marks within its image, by a box or by a polygon whose bounding box counts
 * (ITL2015: Fields 14.021 and 14.025, from memory). The pixels of all four edges belong to it.
 *
 * @param label {@code segment} for a box, {@code outline} for a polygon
 * @param position friction ridge position code of the finger
 * @param repetition how many times the record has marked this finger in this way by now, from 1
 * @param left pixels from the left edge of the image
 * @param top pixels from the upper edge of the image
 * @param right pixels from the left edge of the image
 * @param bottom pixels from the upper edge of the image
 */
public record MarkedFinger(
    String label, int position, int repetition, int left, int top, int right, int bottom) {

  static List<MarkedFinger> of(ExaminedImage image, SpecTables tables) {
    List<MarkedFinger> marked = new ArrayList<>();
    for (SegmentField layout : tables.agreements().segmentFields()) {
      if (layout.positionItem().isEmpty() || layout.field().recordType() != image.record().type()) {
        continue;
      }
      Map<Integer, Integer> times = new HashMap<>();
      for (MarkedSegment segment : MarkedSegment.of(image, layout)) {
        if (segment.position().isPresent()) {
          int position = segment.position().getAsInt();
          marked.add(
              new MarkedFinger(
                  segment.isBox() ? "segment" : "outline",
                  position,
                  times.merge(position, 1, Integer::sum),
                  segment.left(),
                  segment.top(),
                  segment.right(),
                  segment.bottom()));
        }
      }
    }
    return List.copyOf(marked);
  }

  /** What of it lies within the image; nothing where none does or its edges are crossed. */
  Optional<GrayImage> cutFrom(GrayImage image) {
    int lastColumn = Math.min(right, image.width() - 1);
    int lastRow = Math.min(bottom, image.height() - 1);
    return left > lastColumn || top > lastRow
        ? Optional.empty()
        : Optional.of(image.part(left, top, lastColumn - left + 1, lastRow - top + 1));
  }
}
