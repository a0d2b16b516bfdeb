package ridgeproof.desk.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import ridgeproof.ledger.PlatenNote;

/**
 * What stays at one place of a platen from image to image. A stain of one image may be of the
 * finger; one that is in most images in which the place was bare is of the platen.
 */
final class PlatenCheck {

  /** Fewer images cannot tell a stain of the platen from one of a finger. */
  static final int MIN_IMAGES = 4;

  private static final double MOST = 0.7;
  private static final double CELLS_PER_PIXEL = 1 / 16.0;

  private final List<PlatenNote> notes;
  private final PlatenNote first;

  /**
   * @param notes of images of one size, at least one
   */
  PlatenCheck(List<PlatenNote> notes) {
    this.notes = notes;
    this.first = notes.get(0);
  }

  List<ShiftPage.Spot> spots() {
    List<ShiftPage.Spot> spots = new ArrayList<>();
    for (int cell = 0; cell < first.width() * first.height(); cell++) {
      int place = cell;
      long bare = notes.stream().filter(note -> !note.covers(place)).count();
      long stained = notes.stream().filter(note -> note.stains().contains(place)).count();
      if (bare >= MIN_IMAGES && stained >= MOST * bare) {
        spots.add(new ShiftPage.Spot(cell % first.width(), cell / first.width()));
      }
    }
    return spots;
  }

  List<Double> deadRows() {
    return lines(PlatenNote::deadRows);
  }

  List<Double> deadColumns() {
    return lines(PlatenNote::deadColumns);
  }

  private List<Double> lines(Function<PlatenNote, List<Integer>> of) {
    Map<Integer, Integer> counts = new TreeMap<>();
    notes.forEach(note -> of.apply(note).forEach(line -> counts.merge(line, 1, Integer::sum)));
    return counts.entrySet().stream()
        .filter(line -> line.getValue() >= Math.max(MIN_IMAGES, MOST * notes.size()))
        .map(line -> line.getKey() * CELLS_PER_PIXEL)
        .toList();
  }

  static String number(double value) {
    return String.format(Locale.ROOT, "%.3g", value);
  }
}
