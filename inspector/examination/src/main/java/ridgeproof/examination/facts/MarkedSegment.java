package ridgeproof.examination.facts;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import ridgeproof.finding.Location;
import ridgeproof.spec.consistency.SegmentField;
import ridgeproof.transaction.record.Field;
import ridgeproof.transaction.record.Subfield;
import ridgeproof.transaction.record.WholeNumber;

/**
 * A part of an image that a field of its record marks, by its extreme coordinates in pixels.
 *
 * @param position friction ridge position, where the field names one
 * @param statedCorners how many corners the field says there are; 2 for a box
 * @param coordinates how many numbers place them
 */
public record MarkedSegment(
    SegmentField layout,
    Location place,
    OptionalInt position,
    int left,
    int right,
    int top,
    int bottom,
    int statedCorners,
    int coordinates) {

  private static final int BOX_CORNERS = 2;

  /** Each is held against each, so that a damaged field must not bring thousands. */
  private static final int MOST = 100;

  /** The segments of a field; what is no number there is the layout's to report. */
  public static List<MarkedSegment> of(ExaminedImage image, SegmentField layout) {
    List<MarkedSegment> segments = new ArrayList<>();
    Optional<Field> field = image.record().field(layout.field());
    if (field.isPresent()) {
      List<Subfield> subfields = field.get().subfields();
      for (int i = 1; i <= Math.min(subfields.size(), MOST); i++) {
        Location place = image.at(layout.field()).subfield(i, subfields.get(i - 1).range());
        read(layout, place, subfields.get(i - 1)).ifPresent(segments::add);
      }
    }
    return segments;
  }

  private static Optional<MarkedSegment> read(
      SegmentField layout, Location place, Subfield subfield) {
    OptionalInt position =
        layout.positionItem().isPresent()
            ? WholeNumber.parse(subfield.text(layout.positionItem().getAsInt()))
            : OptionalInt.empty();
    Location named = position.isPresent() ? place.withPosition(position) : place;
    List<Integer> numbers = new ArrayList<>();
    for (int item = layout.firstItem(); item <= subfield.items().size(); item++) {
      OptionalInt number = WholeNumber.parse(subfield.text(item));
      if (number.isEmpty()) {
        return Optional.empty();
      }
      numbers.add(number.getAsInt());
    }
    return switch (layout.shape()) {
      case BOX -> box(layout, named, position, numbers);
      case POLYGON -> polygon(layout, named, position, numbers);
    };
  }

  private static Optional<MarkedSegment> box(
      SegmentField layout, Location place, OptionalInt position, List<Integer> edges) {
    return edges.size() != 2 * BOX_CORNERS
        ? Optional.empty()
        : Optional.of(
            new MarkedSegment(
                layout,
                place,
                position,
                edges.get(0),
                edges.get(1),
                edges.get(2),
                edges.get(3),
                BOX_CORNERS,
                edges.size()));
  }

  private static Optional<MarkedSegment> polygon(
      SegmentField layout, Location place, OptionalInt position, List<Integer> numbers) {
    if (numbers.size() < 3) {
      return Optional.empty();
    }
    List<Integer> across = new ArrayList<>();
    List<Integer> down = new ArrayList<>();
    for (int i = 1; i < numbers.size(); i++) {
      (i % 2 == 1 ? across : down).add(numbers.get(i));
    }
    return Optional.of(
        new MarkedSegment(
            layout,
            place,
            position,
            across.stream().mapToInt(x -> x).min().orElseThrow(),
            across.stream().mapToInt(x -> x).max().orElseThrow(),
            down.stream().mapToInt(y -> y).min().orElseThrow(),
            down.stream().mapToInt(y -> y).max().orElseThrow(),
            numbers.get(0),
            numbers.size() - 1));
  }

  public boolean isBox() {
    return layout.shape() == SegmentField.Shape.BOX;
  }

  /** Twice the middle across, so that it stays whole. */
  public int doubleCentre() {
    return left + right;
  }

  public boolean isEmpty() {
    return left >= right || top >= bottom;
  }

  long area() {
    return isEmpty() ? 0 : (long) (right - left) * (bottom - top);
  }

  /** The share of the smaller of two segments that both cover, 0 to 1. */
  public double overlap(MarkedSegment other) {
    long width = Math.min(right, other.right) - (long) Math.max(left, other.left);
    long height = Math.min(bottom, other.bottom) - (long) Math.max(top, other.top);
    long smaller = Math.min(area(), other.area());
    return width <= 0 || height <= 0 || smaller == 0 ? 0 : (double) width * height / smaller;
  }

  public String extent() {
    return String.format(Locale.ROOT, "%d to %d across, %d to %d down", left, right, top, bottom);
  }
}
