package ridgeproof.examination;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import ridgeproof.imagery.GrayImage;
import ridgeproof.spec.FieldNumber;
import ridgeproof.transaction.Field;
import ridgeproof.transaction.LogicalRecord;
import ridgeproof.transaction.Subfield;
import ridgeproof.transaction.WholeNumber;

/**
 * A finger that a record marks within its image (ITL2015: Fields 14.021 and 14.025, from memory).
 * Both edges belong to it.
 *
 * @param kind a box, or a polygon whose bounding box counts
 * @param position friction ridge position code of the finger
 * @param repetition how many times the record has marked this finger in this way by now, from 1
 * @param left pixels from the left edge of the image
 * @param top pixels from the upper edge of the image
 * @param right pixels from the left edge of the image
 * @param bottom pixels from the upper edge of the image
 */
public record Segment(
    Kind kind, int position, int repetition, int left, int top, int right, int bottom) {

  /** How the finger is marked. */
  public enum Kind {
    BOX(new FieldNumber(14, 21), "segment"),
    POLYGON(new FieldNumber(14, 25), "outline");

    private final FieldNumber field;
    private final String label;

    Kind(FieldNumber field, String label) {
      this.field = field;
      this.label = label;
    }

    /** A word for a file name. */
    public String label() {
      return label;
    }
  }

  /** Item of the first point of a polygon: the finger and the number of points come before. */
  private static final int FIRST_POINT = 3;

  /** More than any hand has; a hostile record could mark thousands. */
  private static final int MOST_SEGMENTS = 40;

  static List<Segment> of(LogicalRecord record) {
    List<Segment> segments = new ArrayList<>();
    for (Kind kind : Kind.values()) {
      Map<Integer, Integer> times = new HashMap<>();
      for (Subfield subfield : record.field(kind.field).map(Field::subfields).orElse(List.of())) {
        OptionalInt position = WholeNumber.parse(subfield.text(1));
        if (position.isPresent()) {
          int repetition = times.merge(position.getAsInt(), 1, Integer::sum);
          of(kind, position.getAsInt(), repetition, subfield).ifPresent(segments::add);
        }
      }
    }
    return segments.stream().limit(MOST_SEGMENTS).toList();
  }

  private static Optional<Segment> of(Kind kind, int position, int repetition, Subfield subfield) {
    return switch (kind) {
      case BOX -> box(position, repetition, numbers(subfield, 2));
      case POLYGON -> boundingBox(position, repetition, numbers(subfield, FIRST_POINT));
    };
  }

  /** The numbers from an item on; none at all where one cannot be read. */
  private static List<Integer> numbers(Subfield subfield, int firstItem) {
    List<Integer> numbers = new ArrayList<>();
    for (int item = firstItem; item <= subfield.items().size(); item++) {
      OptionalInt number = WholeNumber.parse(subfield.text(item));
      if (number.isEmpty()) {
        return List.of();
      }
      numbers.add(number.getAsInt());
    }
    return numbers;
  }

  private static Optional<Segment> box(int position, int repetition, List<Integer> edges) {
    return edges.size() < 4
        ? Optional.empty()
        : Optional.of(
            new Segment(
                Kind.BOX,
                position,
                repetition,
                edges.get(0),
                edges.get(2),
                edges.get(1),
                edges.get(3)));
  }

  private static Optional<Segment> boundingBox(
      int position, int repetition, List<Integer> coordinates) {
    if (coordinates.size() < 2) {
      return Optional.empty();
    }
    int left = Integer.MAX_VALUE;
    int top = Integer.MAX_VALUE;
    int right = 0;
    int bottom = 0;
    for (int i = 0; i + 1 < coordinates.size(); i += 2) {
      left = Math.min(left, coordinates.get(i));
      right = Math.max(right, coordinates.get(i));
      top = Math.min(top, coordinates.get(i + 1));
      bottom = Math.max(bottom, coordinates.get(i + 1));
    }
    return Optional.of(new Segment(Kind.POLYGON, position, repetition, left, top, right, bottom));
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
